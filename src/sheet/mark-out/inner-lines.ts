import { leftOf, tangentAt } from '../../geometry/measure/along.ts'
import { signedArea } from '../../geometry/measure/area.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import { circle } from '../../geometry/shape/circle.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polyline } from '../../geometry/shape/polygon.ts'
import { transformContour } from '../../geometry/shape/transform.ts'
import type { Bevel, Bore, Placed } from '../../model/feature.ts'
import { onPlane, type Point3, type Pose, toPart } from '../../model/pose.ts'
import { lineOfStrip, workedLines } from '../../model/strip.ts'
import { coincident } from '../../number/tolerance.ts'
import { dot, seenDirection, throughPoses } from './between-poses.ts'
import { goesThrough } from './choose-views.ts'

/** Lines of what is cut into other faces, as a view shows them: open to it, or hidden in the wood. */
export type InnerLines = { readonly seen: readonly Contour[]; readonly hidden: readonly Contour[] }

/**
 * What is seen of a cut from a face that it is not made in. `deep` is the wood from the cut's own face to the one across
 * from it, in millimetres: how deep goes what goes through. Of faces neither square nor parallel to each other nothing is
 * shown.
 */
export function innerLines(feature: Placed, own: Pose, view: Pose, deep: number): InnerLines {
  const { shape } = feature
  const facing = dot(own.out, view.out)
  const aside = Math.abs(facing) < coincident
  if (!aside && facing > coincident - 1) return { seen: [], hidden: [] }
  if (aside && shape.kind === 'bore') return { seen: [], hidden: boreFromAside(shape, own, view, deep) }
  if (aside && shape.kind === 'bevel') return { seen: slopeFromAside(shape, own, view, deep), hidden: [] }
  if (aside) return { seen: [], hidden: sidesFromAside(feature, own, view, deep) }
  const contours = contoursThrough(shape).map(c => transformContour(c, throughPoses(own, view)))
  return goesThrough(feature) ? { seen: contours, hidden: [] } : { seen: [], hidden: contours }
}

/** The lines of a cut as they are seen through the wood from across it. */
function contoursThrough(shape: Placed['shape']): readonly Contour[] {
  switch (shape.kind) {
    case 'bore':
      return [circle(shape.centre, shape.diameter.mm / 2)]
    case 'pocket':
    case 'cut-out':
      return [shape.region.outer]
    case 'groove':
    case 'rebate':
    case 'bevel':
      return workedLines(shape.region)
    default:
      // the outline has the lines of a notch, and of an eased or engraved face nothing is seen from behind
      return []
  }
}

/** A bevel whose edge is seen end-on: its slope, from the line on its own face to the edge of the other. */
function slopeFromAside({ region, shorter }: Bevel, own: Pose, view: Pose, deep: number): readonly Contour[] {
  const line = region.outer.segments.find(s => s.kind === 'line' && s.tag === lineOfStrip)
  if (line === undefined) return []
  const along = tangentAt(line, 0)
  const seen = seenDirection(view, inSpace(own, along))
  if (Math.hypot(seen.x, seen.y) > coincident) return []
  const turns = Math.sign(signedArea(region.outer))
  const { x, y } = leftOf(along)
  const edge = { x: line.from.x + turns * shorter.mm * x, y: line.from.y + turns * shorter.mm * y }
  const { into } = asideFrame(own, view)
  const end = onPlane(view, toPart(own, edge))
  return [
    polyline([onPlane(view, toPart(own, line.from)), { x: end.x + into.x * deep, y: end.y + into.y * deep }]),
  ]
}

function inSpace({ right, up }: Pose, { x, y }: Point): Point3 {
  return { x: right.x * x + up.x * y, y: right.y * x + up.y * y, z: right.z * x + up.z * y }
}

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
  if (
    shape.kind !== 'pocket' &&
    shape.kind !== 'cut-out' &&
    shape.kind !== 'groove' &&
    shape.kind !== 'rebate'
  )
    return []
  const { into, across3 } = asideFrame(own, view)
  const along = { x: dot(own.right, across3), y: dot(own.up, across3) }
  // the edges of faces that are square to each other run along an axis of both
  const axis = Math.abs(along.x) > Math.abs(along.y) ? 'x' : 'y'
  const { left, right, bottom, top } = regionBounds(shape.region)
  const middle = { x: (left + right) / 2, y: (bottom + top) / 2 }
  const ends = (axis === 'x' ? [left, right] : [bottom, top]).map(at =>
    onPlane(view, toPart(own, { ...middle, [axis]: at })),
  )
  const given = 'depth' in shape && shape.depth !== 'through' ? shape.depth.mm : deep
  const depth = Math.min(given, deep)
  const [a, b] = ends as [Point, Point]
  const below = (p: Point): Point => ({ x: p.x + into.x * depth, y: p.y + into.y * depth })
  if (depth >= deep - coincident) return [polyline([a, below(a)]), polyline([b, below(b)])]
  return [polyline([a, below(a), below(b), b])]
}

/**
 * A bore from aside: two lines along its axis, as far apart as it is wide, from the face to its full depth. That is exact
 * however it leans, but for its end, which is drawn square to the axis.
 */
function boreFromAside(
  { centre, diameter, depth, lean }: Bore,
  own: Pose,
  view: Pose,
  deep: number,
): readonly Contour[] {
  const radius = diameter.mm / 2
  const { into, across } = asideFrame(own, view)
  const angle = lean?.angle ?? 0
  const toward = lean?.toward ?? 0
  const leaning = (axis: 'x' | 'y' | 'z'): number =>
    Math.sin(angle) * (own.right[axis] * Math.cos(toward) + own.up[axis] * Math.sin(toward)) +
    Math.cos(angle) * own.out[axis]
  const outward = { x: leaning('x'), y: leaning('y'), z: leaning('z') }
  const seen = seenDirection(view, { x: -outward.x, y: -outward.y, z: -outward.z })
  const entry = onPlane(view, toPart(own, centre))
  // for each millimetre of depth square to the face, so far along the axis and so far aside
  const down = seen.x * into.x + seen.y * into.y
  const aside = (seen.x * across.x + seen.y * across.y) / down
  const slope = Math.hypot(1, aside)
  const at = (side: number, depthAt: number): Point => {
    const off = side * slope * radius + aside * depthAt
    return { x: entry.x + into.x * depthAt + across.x * off, y: entry.y + into.y * depthAt + across.y * off }
  }
  const full = depth === 'through' ? deep : Math.min(deep, depth.mm * Math.cos(angle))
  if (full >= deep - coincident) return [1, -1].map(side => polyline([at(side, 0), at(side, full)]))
  // the end is square to the axis as it is seen: one side of it goes deeper than the other
  const tilt = (radius * aside) / slope
  return [polyline([at(1, 0), at(1, full - tilt), at(-1, full + tilt), at(-1, 0)])]
}
