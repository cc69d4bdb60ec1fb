import type { Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { slot as stadium } from '../../geometry/shape/slot.ts'
import type { SlotPlan } from '../../plan/plan.ts'
import { type CutBuilder, isKnown, missingSizes, unplaced } from './cut-builder.ts'
import { place } from './position.ts'
import { resolveDepth, resolvePositive } from './resolve-size.ts'

export const buildSlot: CutBuilder<SlotPlan> = (context, cut, extent) => {
  const along = resolvePositive(context, cut.along, 'the size along')
  const across = resolvePositive(context, cut.across, 'the size across')
  const depth = resolveDepth(context, cut.depth)
  if (along === undefined || across === undefined || depth === undefined) return []
  const reach =
    isKnown(along) && isKnown(across) ? { along: along.mm, across: across.mm } : { along: 0, across: 0 }
  const placed = place(context, cut.on.value, extent, cut.at, reach)
  if (placed === undefined) return []
  const missing = [
    ...missingSizes({ 'size along': along, 'size across': across, depth }),
    ...('missing' in placed ? placed.missing : []),
  ]
  if (!isKnown(along) || !isKnown(across) || depth === 'unknown' || 'missing' in placed)
    return unplaced(cut, missing)

  const ends = cut.ends.value
  const region =
    ends === 'round'
      ? roundEnded(placed.at, along.mm, across.mm)
      : squareEnded(placed.at, along.mm, across.mm)
  return [
    {
      id: cut.id.value,
      face: cut.on.value,
      shape: { kind: 'pocket', region, along, across, ends, depth },
      source: cut.source,
    },
  ]
}

function squareEnded(at: Point, along: number, across: number): Region {
  return rectangle({
    left: at.x - along / 2,
    right: at.x + along / 2,
    bottom: at.y - across / 2,
    top: at.y + across / 2,
  })
}

/** The two short ends are round; a slot as long as wide is a circle. */
function roundEnded(at: Point, along: number, across: number): Region {
  const half = Math.abs(along - across) / 2
  const lies = along > across
  const reach = { x: lies ? half : 0, y: lies ? 0 : half }
  return stadium(
    { x: at.x - reach.x, y: at.y - reach.y },
    { x: at.x + reach.x, y: at.y + reach.y },
    Math.min(along, across),
  )
}
