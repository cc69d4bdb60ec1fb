import { leftOf } from '../../geometry/measure/along.ts'
import { middleOfBounds, regionBounds } from '../../geometry/measure/bounds.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polygon } from '../../geometry/shape/polygon.ts'
import { arc, line } from '../../geometry/shape/segment.ts'
import { dot } from '../../geometry/solid/point3.ts'
import { depthUnder } from '../../model/box-faces.ts'
import type { Placed } from '../../model/feature.ts'
import { faceOf, type Solid } from '../../model/part.ts'
import { onPlane, type Point3, type Pose, toPart } from '../../model/pose.ts'
import { extentOf } from '../../model/solid-extent.ts'
import { takenAway } from '../../model/taken-away.ts'
import { coincident } from '../../number/tolerance.ts'
import { seenDirection } from './between-poses.ts'
import type { Seen } from './seen.ts'

/** What a cut takes away as it is seen from aside, and whether it is open to the view, or goes all the way from it through the wood. */
export type Profile = {
  readonly contour: Contour
  readonly opens: 'not' | 'here' | 'through'
  /** It goes from the cut's own face to the one across. */
  readonly whole: boolean
}

/** The profile of a cut on a face that is square to the view; none of a bore, nor of an engraving. */
export function profileOf(feature: Placed, solid: Solid, view: Seen): Profile | undefined {
  const body = takenAway(solid, feature)
  if (body === undefined) return undefined
  const { pose: own, region, depth, slope } = body
  const { into, across3 } = asideFrame(own, view.pose)
  const bounds = regionBounds(region)
  const { left, right, bottom, top } = bounds
  const middle = middleOfBounds(bounds)
  // the edges of faces that are square to each other run along an axis of both
  const axis = Math.abs(dot(own.right, across3)) > Math.abs(dot(own.up, across3)) ? 'x' : 'y'
  const onFace = (at: number): Point => onPlane(view.pose, toPart(own, { ...middle, [axis]: at }))
  const [a, b] = axis === 'x' ? [onFace(left), onFace(right)] : [onFace(bottom), onFace(top)]
  const below = (p: Point): Point => ({ x: p.x + into.x * depth, y: p.y + into.y * depth })
  const box = [a, below(a), below(b), b]
  const { point, out } = slope ?? { point: undefined, out: undefined }
  const edgeOn = out !== undefined && Math.abs(dot(out, view.pose.out)) < coincident
  const kept = edgeOn ? clipped(box, onPlane(view.pose, point), seenDirection(view.pose, out)) : box
  if (kept.length < 3) return undefined
  const rounded = feature.shape.kind === 'round-over' && edgeOn && kept.length === 3
  const out3 = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ].map(p => height(toPart(own, p), view.pose))
  const opens = Math.max(...out3) >= -coincident
  const through = Math.min(...out3) <= coincident - depthUnder(view.face, extentOf(solid))
  return {
    contour: rounded ? quarter(kept, out!, view.pose) : polygon(kept),
    opens: opens ? (through ? 'through' : 'here') : 'not',
    whole: !edgeOn && depth >= depthUnder(feature.face, extentOf(solid)) - coincident,
  }
}

/** How far a place lies outside the plane of a view; in the wood, less than nothing. */
function height(p: Point3, { origin, out }: Pose): number {
  return dot({ x: p.x - origin.x, y: p.y - origin.y, z: p.z - origin.z }, out)
}

/** Where a cut's own face is seen edge-on: its direction into the wood, and the direction of the part that is square to that. */
export function asideFrame(own: Pose, view: Pose): { readonly into: Point; readonly across3: Point3 } {
  const out = seenDirection(view, own.out)
  const into = { x: 0 - out.x, y: 0 - out.y }
  const across = leftOf(into)
  const across3 = {
    x: view.right.x * across.x + view.up.x * across.y,
    y: view.right.y * across.x + view.up.y * across.y,
    z: view.right.z * across.x + view.up.z * across.y,
  }
  return { into, across3 }
}

/** What of a convex polygon lies on the side of a line that `out` leads to. Source: clipping edge by edge, Sutherland and Hodgman, 1974, from memory. */
function clipped(corners: readonly Point[], point: Point, out: Point): readonly Point[] {
  const side = (p: Point): number => (p.x - point.x) * out.x + (p.y - point.y) * out.y
  return corners.flatMap((p, i) => {
    const before = corners.at(i - 1)!
    const [s, t] = [side(before), side(p)]
    const crossing = (): Point => ({
      x: before.x + ((p.x - before.x) * s) / (s - t),
      y: before.y + ((p.y - before.y) * s) / (s - t),
    })
    const inside = t > -coincident
    if (inside) return s < -coincident && t > coincident ? [crossing(), p] : [p]
    return s > coincident ? [crossing()] : []
  })
}

/** The corner that a quarter circle leaves of a triangle: the arc stands in for the side across from the corner. */
function quarter(corners: readonly Point[], out: Point3, view: Pose): Contour {
  const aside = seenDirection(view, out)
  const along = (p: Point): number => p.x * aside.x + p.y * aside.y
  // the corner is the one farthest out, and the circle's centre lies across from it
  const [corner, ...others] = [...corners].sort((a, b) => along(b) - along(a)) as [Point, Point, Point]
  const [a, b] = others as [Point, Point]
  const centre = { x: a.x + b.x - corner.x, y: a.y + b.y - corner.y }
  const cross = (a.x - centre.x) * (b.y - centre.y) - (a.y - centre.y) * (b.x - centre.x)
  return { segments: [line(corner, a), arc(a, b, centre, cross > 0 ? 1 : -1), line(b, corner)], closed: true }
}

/** The view that shows how deep a cut along the wood is: from the end that it runs to. */
export function profileFace(feature: Placed, solid: Solid): 'end' | 'edge' | 'front' | undefined {
  const { shape, face } = feature
  const runsAlong = (x: boolean): 'end' | 'edge' | 'front' => {
    if (face === 'front' || face === 'back') return x ? 'end' : 'edge'
    if (face === 'top' || face === 'bottom') return x ? 'end' : 'front'
    return x ? 'edge' : 'front'
  }
  switch (shape.kind) {
    case 'groove':
      return runsAlong(shape.runs === 'x')
    case 'rebate':
    case 'bevel':
    case 'chamfer':
    case 'round-over': {
      if (shape.edge === 'all') return 'edge'
      const { right } = faceOf(solid, shape.edge).pose
      const own = faceOf(solid, face).pose
      return runsAlong(Math.abs(dot(right, own.right)) > Math.abs(dot(right, own.up)))
    }
    default:
      return undefined
  }
}
