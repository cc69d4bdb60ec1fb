import type { Side } from '../../finding/side.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import type { NotchPlan } from '../../plan/plan.ts'
import type { Extent } from '../box-faces.ts'
import type { Missing } from '../feature.ts'
import { type CutBuilder, isKnown, missingSizes, unplaced } from './cut-builder.ts'
import { place } from './position.ts'
import { resolvePositive } from './resolve-size.ts'

/** A rectangle out of an edge or end, seen on the front; its place is asked along the edge alone. */
export const buildNotch: CutBuilder<NotchPlan> = (context, cut, extent) => {
  const edge = cut.on.value
  const isEnd = edge === 'left' || edge === 'right'
  const along = resolvePositive(context, cut.along, 'the size along the edge')
  const into = resolvePositive(context, cut.into, 'the size into the part')
  if (along === undefined || into === undefined) return []
  const reach = isKnown(along) ? { along: along.mm, across: along.mm } : { along: 0, across: 0 }
  const source = cut.at.source
  // across the edge a notch begins at the edge itself, so the middle stands for "asked of nobody"
  const position = isEnd
    ? { ...cut.at, along: { kind: 'centre' as const, source } }
    : { ...cut.at, across: { kind: 'centre' as const, source } }
  const placed = place(context, 'front', extent, position, reach)
  if (placed === undefined) return []
  const missing: readonly Missing[] = [
    ...missingSizes({ 'size along the edge': along, 'size into the part': into }),
    ...('missing' in placed ? placed.missing : []),
  ]
  if (!isKnown(along) || !isKnown(into) || 'missing' in placed) return unplaced(cut, missing)

  const middle = isEnd ? placed.at.y : placed.at.x
  return [
    {
      id: cut.id.value,
      face: 'front',
      shape: { kind: 'edge-cut', edge, region: waste(edge, middle, along.mm, into.mm, extent), along, into },
      source: cut.source,
    },
  ]
}

function waste(edge: Side, middle: number, along: number, into: number, { length, width }: Extent) {
  const low = middle - along / 2
  const high = middle + along / 2
  switch (edge) {
    case 'left':
      return rectangle({ left: 0, right: into, bottom: low, top: high })
    case 'right':
      return rectangle({ left: length - into, right: length, bottom: low, top: high })
    case 'top':
      return rectangle({ left: low, right: high, bottom: width - into, top: width })
    default:
      return rectangle({ left: low, right: high, bottom: 0, top: into })
  }
}
