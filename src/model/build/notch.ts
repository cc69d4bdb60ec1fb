import type { Side } from '../../finding/side.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import type { NotchPlan } from '../../plan/plan.ts'
import type { Extent } from '../box-faces.ts'
import type { Missing } from '../feature.ts'
import { type CutBuilder, described, isKnown, missingSizes, unplaced } from './cut-builder.ts'
import { sideFrame } from './face-frame.ts'
import { coordinate } from './position.ts'
import { resolvePositive } from './resolve-size.ts'

/** A rectangle out of an edge or end, seen on the front; its place is asked along the edge alone. */
export const buildNotch: CutBuilder<NotchPlan> = (site, cut) => {
  const { context, extent } = site
  const edge = cut.edge.value
  const along = resolvePositive(context, cut.along, 'the size along the edge')
  const into = resolvePositive(context, cut.into, 'the size into the part')
  if (along === undefined || into === undefined) return []
  const front = sideFrame('front', extent)
  const between = edge === 'left' || edge === 'right' ? front.across : front.along
  const middle = coordinate(site, front, cut.at, between, isKnown(along) ? along.mm : 0)
  if (middle === undefined) return []
  const missing: readonly Missing[] = [
    ...missingSizes({ 'size along the edge': along, 'size into the part': into }),
    ...('missing' in middle ? [middle.missing] : []),
  ]
  if (!isKnown(along) || !isKnown(into) || 'missing' in middle) {
    return [unplaced(cut, cut.id.value, edge, missing)]
  }
  const region = waste(edge, middle.value, along.mm, into.mm, extent)
  return [
    {
      id: cut.id.value,
      face: 'front',
      shape: { kind: 'edge-cut', edge, region, along, into },
      ...described(cut),
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
