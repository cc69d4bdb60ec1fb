import { contourBounds } from '../../geometry/measure/bounds.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { shift, turn } from '../../geometry/shape/matrix.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { slot as stadium } from '../../geometry/shape/slot.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import type { SlotPlan } from '../../plan/plan.ts'
import type { Feature } from '../feature.ts'
import { type CutBuilder, described, facesOf, isKnown, missingSizes, unplaced } from './cut-builder.ts'
import { place } from './position.ts'
import { resolveAngle, resolveDepth, resolvePositive } from './resolve-size.ts'

/** A slot or mortise. A distance leads to its near side: of round ends their outermost points, of a turned slot too. */
export const buildSlot: CutBuilder<SlotPlan> = (site, cut) => {
  const { context } = site
  const along = resolvePositive(context, cut.along, 'the size along')
  const across = resolvePositive(context, cut.across, 'the size across')
  const depth = resolveDepth(context, cut.depth)
  const angle = cut.angle === undefined ? 0 : resolveAngle(context, cut.angle)
  const faces = facesOf(site, cut)
  if (faces === undefined) return []
  const ends = cut.ends.value
  const shape =
    isKnown(along) && isKnown(across) && typeof angle === 'number'
      ? turned(slotAboutOrigin(along.mm, across.mm, ends), angle)
      : undefined
  const box = shape && contourBounds(shape.outer)
  const reach = box ? { along: box.right - box.left, across: box.top - box.bottom } : { along: 0, across: 0 }
  return faces.flatMap(({ frame, id }): readonly Feature[] => {
    const placed = place(site, frame, cut.at, reach)
    if (placed === undefined || angle === undefined || depth === undefined) return []
    if (along === undefined || across === undefined) return []
    const missing = [
      ...missingSizes({ 'size along': along, 'size across': across, depth, angle }),
      ...('missing' in placed ? placed.missing : []),
    ]
    if (shape === undefined || !isKnown(along) || !isKnown(across) || angle === 'unknown')
      return [unplaced(cut, id, frame.id, missing)]
    if (depth === 'unknown' || 'missing' in placed) return [unplaced(cut, id, frame.id, missing)]
    const region = transformRegion(shape, shift(placed.at.x, placed.at.y))
    return [
      {
        id,
        face: frame.id,
        shape: { kind: 'pocket', region, along, across, ends, angle, depth },
        ...described(cut),
      },
    ]
  })
}

/** Of round ends the two short ones are; a slot as long as wide is a circle. */
function slotAboutOrigin(along: number, across: number, ends: 'square' | 'round'): Region {
  if (ends === 'square') {
    return rectangle({ left: -along / 2, right: along / 2, bottom: -across / 2, top: across / 2 })
  }
  const half = Math.abs(along - across) / 2
  const reach = along > across ? { x: half, y: 0 } : { x: 0, y: half }
  return stadium({ x: 0 - reach.x, y: 0 - reach.y }, reach, Math.min(along, across))
}

function turned(region: Region, angle: number): Region {
  return angle === 0 ? region : transformRegion(region, turn(angle))
}
