import { leftOf } from '../../geometry/measure/along.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polyline } from '../../geometry/shape/polygon.ts'
import { transformContour } from '../../geometry/shape/transform.ts'
import { dot } from '../../geometry/solid/point3.ts'
import { axisOf, pointAlong } from '../../model/bore/axis.ts'
import { mouthDepth } from '../../model/bore/mouth.ts'
import { ovalContour, rimOval } from '../../model/bore/rim.ts'
import { tipLength, tipOf } from '../../model/bore/tip.ts'
import { wayOut } from '../../model/bore/way-through.ts'
import { depthUnder } from '../../model/box-faces.ts'
import type { Bore, Placed, Shape } from '../../model/feature.ts'
import { faceOf, type Solid } from '../../model/part.ts'
import { onPlane, type Point3, type Pose } from '../../model/pose.ts'
import { extentOf } from '../../model/solid-extent.ts'
import { workedLines } from '../../model/strip.ts'
import { coincident } from '../../number/tolerance.ts'
import type { BitTip } from '../../workshop/workshop.ts'
import { seenDirection, throughPoses } from './between-poses.ts'
import { goesThrough } from './choose-views.ts'
import { asideFrame, profileOf } from './profile.ts'
import type { Seen } from './seen.ts'

/** Lines of what is cut into other faces, as a view shows them: open to it, or hidden in the wood. */
export type InnerLines = { readonly seen: readonly Contour[]; readonly hidden: readonly Contour[] }

/**
 * What is seen of a cut from a face that it is not made in. Of faces neither square nor parallel to each other nothing is
 * shown.
 */
export function innerLines(feature: Placed, solid: Solid, view: Seen, bits: BitTip): InnerLines {
  const { shape } = feature
  // a notch goes through the thickness: the outline of the views along it has its lines
  if (shape.kind === 'edge-cut') return none
  const own = faceOf(solid, feature.face).pose
  const facing = dot(own.out, view.pose.out)
  if (Math.abs(facing) < coincident) {
    if (shape.kind === 'bore') {
      const deep = depthUnder(feature.face, extentOf(solid))
      return { seen: [], hidden: boreFromAside(shape, own, view.pose, deep, bits) }
    }
    return cutFromAside(feature, solid, view)
  }
  if (facing > coincident - 1) return none
  if (shape.kind === 'bore') return boreFromBehind({ ...feature, shape }, solid, view.pose)
  const behind = throughPoses(own, view.pose)
  const contours = linesBehind(shape).map(c => transformContour(c, behind))
  return goesThrough(feature) ? { seen: contours, hidden: [] } : { seen: [], hidden: contours }
}

const none: InnerLines = { seen: [], hidden: [] }

/** What shows dashed on the face across; nothing of what is no deeper than it shows. */
function linesBehind(shape: Exclude<Shape, Bore>): readonly Contour[] {
  switch (shape.kind) {
    case 'engraved-lines':
    case 'engraved-text':
      return []
    case 'pocket':
    case 'cut-out':
    case 'edge-cut':
      return [shape.region.outer, ...shape.region.holes]
    default:
      return workedLines(shape.region)
  }
}

/** What goes right through from the view is in the view's own outline. */
function cutFromAside(feature: Placed, solid: Solid, view: Seen): InnerLines {
  const profile = profileOf(feature, solid, view)
  if (profile === undefined || profile.opens === 'through') return none
  const { contour, opens, whole } = profile
  if (opens === 'here') return { seen: [contour], hidden: [] }
  const { segments } = contour
  // its mouth lies on the edge of the wood, and so does its end where it goes through
  const walls = whole ? [segments[0]!, segments[2]!] : segments.slice(0, -1)
  return { seen: [], hidden: walls.map(segment => ({ segments: [segment], closed: false })) }
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
