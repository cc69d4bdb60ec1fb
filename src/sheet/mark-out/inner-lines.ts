import { leftOf } from '../../geometry/measure/along.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polyline } from '../../geometry/shape/polygon.ts'
import { transformContour } from '../../geometry/shape/transform.ts'
import { axisOf, pointAlong } from '../../model/bore/axis.ts'
import { mouthDepth } from '../../model/bore/mouth.ts'
import { ovalContour, rimOval } from '../../model/bore/rim.ts'
import { tipLength, tipOf } from '../../model/bore/tip.ts'
import { wayOut } from '../../model/bore/way-through.ts'
import { depthUnder } from '../../model/depth-under.ts'
import type { Bore, Placed } from '../../model/feature.ts'
import { faceOf, type Solid } from '../../model/part.ts'
import { onPlane, type Point3, type Pose, toPart } from '../../model/pose.ts'
import { coincident } from '../../number/tolerance.ts'
import type { BitTip } from '../../workshop/workshop.ts'
import { dot, seenDirection, throughPoses } from './between-poses.ts'
import { goesThrough } from './choose-views.ts'

/** Lines of what is cut into other faces, as a view shows them: open to it, or hidden in the wood. */
export type InnerLines = { readonly seen: readonly Contour[]; readonly hidden: readonly Contour[] }

/**
 * What is seen of a cut from a face that it is not made in. Of faces neither square nor parallel to each other nothing is
 * shown.
 */
export function innerLines(feature: Placed, solid: Solid, view: Pose, bits: BitTip): InnerLines {
  const { shape } = feature
  // a notch goes through the thickness: the outline of the views along it has its lines
  if (shape.kind === 'edge-cut') return none
  const own = faceOf(solid, feature.face).pose
  const facing = dot(own.out, view.out)
  if (Math.abs(facing) < coincident) {
    const deep = depthUnder(solid, feature.face)
    return {
      seen: [],
      hidden:
        shape.kind === 'bore'
          ? boreFromAside(shape, own, view, deep, bits)
          : sidesFromAside(feature, own, view, deep),
    }
  }
  if (facing > coincident - 1) return none
  if (shape.kind === 'bore') return boreFromBehind({ ...feature, shape }, solid, view)
  const behind = throughPoses(own, view)
  const contours = [shape.region.outer, ...shape.region.holes].map(c => transformContour(c, behind))
  return goesThrough(feature) ? { seen: contours, hidden: [] } : { seen: [], hidden: contours }
}

const none: InnerLines = { seen: [], hidden: [] }

/** Where a cut's own face is seen edge-on: its direction into the wood, and the one square to that. */
function asideFrame(
  own: Pose,
  view: Pose,
): { readonly into: Point; readonly across: Point; readonly across3: Point3 } {
  const out = seenDirection(view, own.out)
  const into = { x: 0 - out.x, y: 0 - out.y }
  const across = { x: 0 - into.y, y: into.x }
  const across3 = {
    x: view.right.x * across.x + view.up.x * across.y,
    y: view.right.y * across.x + view.up.y * across.y,
    z: view.right.z * across.x + view.up.z * across.y,
  }
  return { into, across, across3 }
}

/** A slot or the like from aside: as broad as it is on its face, as deep as it is cut. */
function sidesFromAside({ shape }: Placed, own: Pose, view: Pose, deep: number): readonly Contour[] {
  if (shape.kind === 'bore') return []
  const { into, across3 } = asideFrame(own, view)
  const along = { x: dot(own.right, across3), y: dot(own.up, across3) }
  // the edges of faces that are square to each other run along an axis of both
  const axis = Math.abs(along.x) > Math.abs(along.y) ? 'x' : 'y'
  const { left, right, bottom, top } = regionBounds(shape.region)
  const middle = { x: (left + right) / 2, y: (bottom + top) / 2 }
  const ends = (axis === 'x' ? [left, right] : [bottom, top]).map(at =>
    onPlane(view, toPart(own, { ...middle, [axis]: at })),
  )
  const through = goesThroughOf(shape)
  const depth = through === undefined ? deep : Math.min(through, deep)
  const [a, b] = ends as [Point, Point]
  const below = (p: Point): Point => ({ x: p.x + into.x * depth, y: p.y + into.y * depth })
  if (depth >= deep - coincident) return [polyline([a, below(a)]), polyline([b, below(b)])]
  return [polyline([a, below(a), below(b), b])]
}

/** The depth of a cut in millimetres; nothing where it goes through. */
function goesThroughOf(shape: Exclude<Placed['shape'], Bore>): number | undefined {
  return shape.kind === 'pocket' && shape.depth !== 'through' ? shape.depth.mm : undefined
}

/**
 * A bore from aside: two lines along its axis, as far apart as it is wide, from the face to its full depth, the cone of a
 * twist drill below that, and its mouth. Exact for an axis that lies in the plane of the view; of another one the lines
 * along it are exact, and what is square to it is drawn as if it lay there.
 */
function boreFromAside(bore: Bore, own: Pose, view: Pose, deep: number, bits: BitTip): readonly Contour[] {
  const axis = axisOf(bore, own)
  const entry = onPlane(view, axis.from)
  const seen = seenDirection(view, axis.into)
  const share = Math.hypot(seen.x, seen.y)
  const way = { x: seen.x / share, y: seen.y / share }
  const aside = leftOf(way)
  const { into } = asideFrame(own, view)
  const down = way.x * into.x + way.y * into.y
  const lean = aside.x * into.x + aside.y * into.y
  const at = (off: number, along: number): Point => ({
    x: entry.x + aside.x * off + way.x * along,
    y: entry.y + aside.y * off + way.y * along,
  })
  /** On the line at `off` from the axis, so deep straight under the face. */
  const under = (off: number, depth: number): Point => at(off, (depth - off * lean) / down)
  const radius = bore.diameter.mm / 2
  const mouth = mouthFromAside(bore, share, at, under)
  if (bore.depth === 'through')
    return [...mouth, ...[radius, -radius].map(off => polyline([under(off, 0), under(off, deep)]))]
  const end = bore.depth.mm * share
  const walls = polyline([under(radius, 0), at(radius, end), at(-radius, end), under(-radius, 0)])
  if (tipOf(bore, bits).point !== 'twist') return [...mouth, walls]
  const tip = at(0, end + tipLength(bore, bits) * share)
  return [...mouth, walls, polyline([at(radius, end), tip, at(-radius, end)])]
}

function mouthFromAside(
  bore: Bore,
  share: number,
  at: (off: number, along: number) => Point,
  under: (off: number, depth: number) => Point,
): readonly Contour[] {
  const { mouth, diameter } = bore
  if (mouth === undefined) return []
  const wide = mouth.diameter.mm / 2
  const narrow = mouth.kind === 'countersink' ? diameter.mm / 2 : wide
  const end = mouthDepth(bore) * share
  return [polyline([under(wide, 0), at(narrow, end), at(-narrow, end), under(-wide, 0)])]
}

/** A bore from the face across: where it comes out, or its hidden end. */
function boreFromBehind(feature: Placed & { readonly shape: Bore }, solid: Solid, view: Pose): InnerLines {
  const { shape } = feature
  const axis = axisOf(shape, faceOf(solid, feature.face).pose)
  const way = seenDirection(view, axis.into)
  const oval = rimOval(shape)
  const round = (at: Point3): Contour =>
    ovalContour({ ...oval, centre: onPlane(view, at), angle: Math.atan2(way.y, way.x) })
  if (shape.depth !== 'through') return { seen: [], hidden: [round(pointAlong(axis, shape.depth.mm))] }
  const out = wayOut(solid, { face: feature.face, shape })
  return out === undefined ? none : { seen: [round(out.point)], hidden: [] }
}
