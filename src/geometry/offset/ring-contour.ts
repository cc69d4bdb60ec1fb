import { angleLessSine } from '../measure/area.ts'
import type { Contour } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import { arcOf, line, type Segment } from '../shape/segment.ts'
import { angleAlong, type PackedCurve, roleEdge, stride } from './packed-curve.ts'
import type { Parts } from './trim.ts'

/** A contour with the area it goes round (mm², positive counter-clockwise) and its length in mm. */
export type MeasuredContour = {
  readonly contour: Contour
  readonly area: number
  readonly length: number
}

/** Where the edges of a curve come from, and the tag of what fills corners and closes ends. */
export type Origin = {
  /** The edges of the input, by source number. */
  readonly edges: readonly Segment[]
  readonly joinTag: string | undefined
}

/** The contour of a ring, the parts from `first` up to `end`. The offset of an edge takes the tag of that edge. */
export function ringContour(
  curve: PackedCurve,
  parts: Parts,
  first: number,
  end: number,
  origin: Origin,
): MeasuredContour {
  const { data } = curve
  const { segment, crossing, places } = parts
  const startOf = (i: number): Point => {
    const c = crossing[i]!
    if (c >= 0) return { x: places[2 * c]!, y: places[2 * c + 1]! }
    const at = segment[i]! * stride
    return { x: data[at]!, y: data[at + 1]! }
  }
  const drawn = begin(end - first)
  const start = startOf(first)
  let from = start
  for (let i = first; i < end; i++) {
    const to = i + 1 === end ? start : startOf(i + 1)
    draw(drawn, i - first, curve, segment[i]!, from, to, start, origin)
    from = to
  }
  return finish(drawn)
}

/** The contour of a whole chain, from segment `first` up to `end`. */
export function chainContour(
  curve: PackedCurve,
  first: number,
  end: number,
  origin: Origin,
): MeasuredContour {
  const { data } = curve
  const drawn = begin(end - first)
  const start = { x: data[first * stride]!, y: data[first * stride + 1]! }
  let from: Point = start
  for (let k = first; k < end; k++) {
    const at = k * stride
    const to = k + 1 === end ? start : { x: data[at + 2]!, y: data[at + 3]! }
    draw(drawn, k - first, curve, k, from, to, start, origin)
    from = to
  }
  return finish(drawn)
}

type Drawn = { readonly segments: Segment[]; twice: number; length: number }

function begin(count: number): Drawn {
  return { segments: new Array(count), twice: 0, length: 0 }
}

function finish(drawn: Drawn): MeasuredContour {
  return { contour: { segments: drawn.segments, closed: true }, area: drawn.twice / 2, length: drawn.length }
}

/** Segment `k` of the curve, or the part of it between two points, as number `i` of a contour. */
function draw(
  drawn: Drawn,
  i: number,
  curve: PackedCurve,
  k: number,
  from: Point,
  to: Point,
  start: Point,
  { edges, joinTag }: Origin,
): void {
  const { data } = curve
  const at = k * stride
  const edge = edges[curve.source[k]!]!
  const ofEdge = curve.role[k] === roleEdge
  const tag = ofEdge ? edge.tag : joinTag
  const turn = data[at + 7]!
  drawn.twice += (from.x - start.x) * (to.y - start.y) - (from.y - start.y) * (to.x - start.x)
  if (turn === 0) {
    drawn.segments[i] = line(from, to, tag)
    drawn.length += Math.abs(to.x - from.x) + Math.abs(to.y - from.y)
    return
  }
  const cx = data[at + 4]!
  const cy = data[at + 5]!
  const radius = data[at + 6]!
  const angle = angleAlong(turn, from.x - cx, from.y - cy, to.x - cx, to.y - cy)
  drawn.twice += turn * radius * radius * angleLessSine(angle)
  drawn.length += radius * angle
  const centre = ofEdge && edge.kind === 'arc' ? edge.centre : cornerOf(edge, cx, cy)
  const way = turn > 0 ? 1 : -1
  drawn.segments[i] = arcOf(from, to, centre, radius, way, tag)
}

/** The end of an edge that a join turns about. */
function cornerOf({ from, to }: Segment, x: number, y: number): Point {
  if (to.x === x && to.y === y) return to
  return from.x === x && from.y === y ? from : { x, y }
}
