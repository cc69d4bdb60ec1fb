import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Segment } from '../../geometry/shape/segment.ts'
import type { Placed } from '../../model/feature.ts'
import { shapeBounds } from '../../model/shape-bounds.ts'
import { workedLines } from '../../model/strip.ts'
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
  /** Whether the table of the mark-out says where it is. */
  readonly tabled?: boolean
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
    return [{ at: shape.centre, radius: shape.diameter.mm / 2, rank: inner ? 3 : 2, cut, tabled: true }]
  }
  const place = (at: Point): Place => ({ at, radius: 0, rank: 1, cut })
  switch (shape.kind) {
    // the outline of the view has the lines of a notch, and small arrises are eased by eye and gauge
    case 'edge-cut':
    case 'chamfer':
    case 'round-over':
      return []
    case 'engraved-text':
      return [place(shape.at)]
    case 'groove':
    case 'rebate':
    case 'bevel':
      return workedLines(shape.region)
        .flatMap(({ segments }) => segments.flatMap(({ from, to }) => [from, to]))
        .map(place)
    case 'pocket':
    case 'cut-out':
    case 'engraved-lines': {
      const { left, right, bottom, top } = shapeBounds(shape)
      const contours = shape.kind === 'engraved-lines' ? [] : [shape.region.outer, ...shape.region.holes]
      if (contours[0] !== undefined && isFullCircle(contours[0]))
        return [place({ x: (left + right) / 2, y: (bottom + top) / 2 })]
      const corners = contours.flatMap(contour => wanted(contour, () => false))
      return [{ x: left, y: bottom }, { x: right, y: top }, ...corners].map(place)
    }
  }
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
export function middleOfView({ box: { left, right, bottom, top } }: View, axis: 'x' | 'y'): number {
  return axis === 'x' ? (left + right) / 2 : (bottom + top) / 2
}
