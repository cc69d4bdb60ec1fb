import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Segment } from '../../geometry/shape/segment.ts'
import type { Placed } from '../../model/feature.ts'
import { shapeBounds } from '../../model/shape-bounds.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Rank } from '../dimension/run.ts'
import { isFillet, isFullCircle, withWholeArcs } from './arcs.ts'
import { cornersOf } from './outline-lines.ts'
import type { View } from './view.ts'

/** A point of a view to be dimensioned, in the face's millimetres; `radius` of what stands about it and stays free of lines. */
export type Place = {
  readonly at: Point
  readonly radius: number
  readonly rank: Rank
  /** The cut that it belongs to; none for the outline. */
  readonly cut?: string
}

/** The corners of the wood, without those that are only chamfered. */
export function outlinePlaces({ wood }: View, isChamfer: (edge: Segment) => boolean): readonly Place[] {
  return wood.flatMap(({ outer, holes }) =>
    [outer, ...holes].flatMap(contour =>
      isFullCircle(contour)
        ? []
        : wanted(contour, isChamfer).map((at): Place => ({ at, radius: 0, rank: 1 })),
    ),
  )
}

/** Where a cut stands: the centre of what is round, the corners and outermost sides of all else. */
export function cutPlaces(feature: Placed): readonly Place[] {
  const { shape, cut, row } = feature
  if (shape.kind === 'bore') {
    const inner = row !== undefined && row.number > 1 && row.number < row.count
    return [{ at: shape.centre, radius: shape.diameter.mm / 2, rank: inner ? 3 : 2, cut }]
  }
  const place = (at: Point): Place => ({ at, radius: 0, rank: 1, cut })
  const { left, right, bottom, top } = shapeBounds(shape)
  switch (shape.kind) {
    // the outline of the view has the lines of a notch, and the key says how wide an eased arris is
    case 'edge-cut':
    case 'chamfer':
    case 'round-over':
      return []
    case 'engraved-text':
      return [place(shape.at)]
    case 'engraved-lines':
      return [place({ x: left, y: bottom }), place({ x: right, y: top })]
  }
  const { outer, holes } = shape.region
  if (isFullCircle(outer)) return [place({ x: (left + right) / 2, y: (bottom + top) / 2 })]
  return [
    place({ x: left, y: bottom }),
    place({ x: right, y: top }),
    ...[outer, ...holes].flatMap(contour => wanted(contour, () => false)).map(place),
  ]
}

/** The middle of a circle of holes, which is marked before they are. */
export function circleOf(
  holes: readonly Placed[],
): { readonly centre: Point; readonly radius: number } | undefined {
  const centres = holes.flatMap(({ shape }) => (shape.kind === 'bore' ? [shape.centre] : []))
  if (centres.length < 3 || centres.length !== holes.length) return undefined
  const mean = (axis: 'x' | 'y'): number => centres.reduce((sum, c) => sum + c[axis], 0) / centres.length
  const centre = { x: mean('x'), y: mean('y') }
  const radii = centres.map(c => Math.hypot(c.x - centre.x, c.y - centre.y))
  const radius = radii[0]!
  return radii.every(r => Math.abs(r - radius) < 2 * coincident) && radius > coincident
    ? { centre, radius }
    : undefined
}

/** Where edges meet, but for where an arc only rounds a corner or an end, and at chamfers. */
function wanted(whole: Contour, isChamfer: (edge: Segment) => boolean): readonly Point[] {
  const contour = withWholeArcs(whole)
  const { segments } = contour
  const sharp = new Set(cornersOf(contour).map(({ at }) => at))
  const plain = segments.map((edge, i) => edge.kind === 'line' || isFillet(contour, i))
  return segments.flatMap((after, i) => {
    const before = (i + segments.length - 1) % segments.length
    if (isChamfer(after) || isChamfer(segments[before]!)) return []
    return sharp.has(after.from) || !plain[i] || !plain[before] ? [after.from] : []
  })
}

/** The middle of a view along an axis. */
export function middleOfView({ wood }: View, axis: 'x' | 'y'): number {
  const { left, right, bottom, top } = boundsOfRegions(wood)
  return axis === 'x' ? (left + right) / 2 : (bottom + top) / 2
}
