import { type Side, sides } from '../../finding/side.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Protrusion } from '../../geometry/measure/protrusion.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { mirrorAcross } from '../../geometry/shape/matrix.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { depthUnder } from '../../model/box-faces.ts'
import { isPlaced } from '../../model/feature.ts'
import { silhouette } from '../../model/finished-outline.ts'
import type { Face, Part } from '../../model/part.ts'
import { coincident } from '../../number/tolerance.ts'
import { stickingOut } from '../wood/sticks-out.ts'
import { type Cut, cutOf, type Taking, takesWood } from './cut.ts'
import { type Eased, isEasing } from './eased.ts'
import { type Piled, pilesOf } from './piles.ts'

/**
 * A face of a part with all that is cut into it. What is cut into the back stands with the front, seen through the
 * wood, so that the two can meet.
 */
export type Plane = {
  readonly face: Face
  /** The wood before anything is cut out of it. */
  readonly blank: Region
  /** The wood when the notches are cut, usually one piece; as it is before edges are eased. */
  readonly wood: readonly Region[]
  /** Everything but what eases an edge. */
  readonly cuts: readonly Cut[]
  /** Those that stick out of the blank, with how far and past which edge. */
  readonly out: ReadonlyMap<Cut, Protrusion>
  /** The same without what stands piled on one spot, and the piles. */
  readonly piled: Piled
  readonly eased: readonly Eased[]
}

/** The planes that something is cut into, and the front of every part. */
export function planesOf(part: Part): readonly Plane[] {
  const { drawn, length, thickness } = part
  const features = drawn.features.filter(isPlaced).filter(takesWood)
  const through = mirrorAcross(length.mm / 2)
  const all = features.flatMap((feature): Cut[] => {
    if (feature.face === 'front') return [cutOf(feature, thickness.mm)]
    return feature.face === 'back' ? [cutOf(feature, thickness.mm, through, true)] : []
  })
  const cuts = all.filter(({ feature }) => !isEasing(feature.shape))
  const eased = all.flatMap((cut): Eased[] => {
    const { shape } = cut.feature
    return isEasing(shape) ? [{ ...cut, shape }] : []
  })
  const front = {
    face: drawn.faces.front,
    blank: drawn.outline,
    wood: silhouette(drawn),
    cuts,
    out: stickingOut(cuts, drawn.outline),
    piled: pilesOf(cuts),
    eased,
  }
  const notches = cuts.filter(({ feature }) => feature.shape.kind === 'edge-cut')
  return [front, ...edgePlanes(part, features, notches)]
}

function edgePlanes(part: Part, features: readonly Taking[], notches: readonly Cut[]): readonly Plane[] {
  const { drawn, length, width, thickness } = part
  const onEdges = sides.filter(side => side !== 'front' && side !== 'back').map(side => drawn.faces[side])
  return [...onEdges, ...drawn.edges].flatMap(face => {
    const own = features.filter(feature => feature.face === face.id)
    if (own.length === 0) return []
    const depth = depthUnder(face.id, { length: length.mm, width: width.mm, thickness: thickness.mm })
    const cuts = own.map(feature => cutOf(feature, depth))
    const wood = woodOfEdge(part, face, notches)
    const out = stickingOut(cuts, face.region)
    return [{ face, blank: face.region, wood, cuts, out, piled: pilesOf(cuts), eased: [] }]
  })
}

/** The edge or end without the stretches that notches take away; each stretch reaches through the thickness. */
function woodOfEdge({ length, width }: Part, face: Face, notches: readonly Cut[]): readonly Region[] {
  const whole = regionBounds(face.region)
  const ends = face.id === 'left' || face.id === 'right'
  const gone = notches
    .filter(({ bounds }) => reaches(face.id as Side, bounds, length.mm, width.mm))
    .map(({ bounds: b }) => (ends ? ([b.bottom, b.top] as const) : ([b.left, b.right] as const)))
    .sort((a, b) => a[0] - b[0])
  if (gone.length === 0) return [face.region]
  const low = ends ? whole.bottom : whole.left
  const high = ends ? whole.top : whole.right
  const stretches: Region[] = []
  let at = low
  for (const [from, to] of [...gone, [high, high] as const]) {
    if (from - at > coincident) {
      stretches.push(
        rectangle(ends ? { ...whole, bottom: at, top: from } : { ...whole, left: at, right: from }),
      )
    }
    at = Math.max(at, to)
  }
  return stretches
}

function reaches(
  side: Side,
  { left, right, bottom, top }: Cut['bounds'],
  length: number,
  width: number,
): boolean {
  switch (side) {
    case 'left':
      return left <= coincident
    case 'right':
      return right >= length - coincident
    case 'bottom':
      return bottom <= coincident
    case 'top':
      return top >= width - coincident
    default:
      return false
  }
}
