import { arcChords } from '../../geometry/approximate/chords.ts'
import { leftOf, tangentAt, unit } from '../../geometry/measure/along.ts'
import { signedArea } from '../../geometry/measure/area.ts'
import type { Contour, Region } from '../../geometry/shape/contour.ts'
import type { Point, Vector } from '../../geometry/shape/point.ts'
import type { Segment } from '../../geometry/shape/segment.ts'
import { printable } from '../../number/tolerance.ts'
import { lineOfStrip } from '../strip.ts'

/** A stretch of the strip along a rim: between two places on the line where it begins and those over against them on the edge. */
export type RimPiece = {
  readonly inner: readonly [Point, Point]
  readonly outer: readonly [Point, Point]
}

/**
 * The strip of a face along a whole rim in convex pieces, `width` (mm) wide: one for each straight edge, mitred where two
 * meet, and one for each chord of a curve, which lies within `printable` of it.
 */
export function rimPieces({ outer, holes }: Region, width: number): readonly RimPiece[] {
  // the strip lies inside its outer contour and outside the others
  return [...alongContour(outer, width, 1), ...holes.flatMap(hole => alongContour(hole, width, -1))]
}

function alongContour(contour: Contour, width: number, inside: 1 | -1): readonly RimPiece[] {
  const { segments } = contour
  const side = inside * Math.sign(signedArea(contour))
  const isWorked = ({ tag }: Segment) => tag === lineOfStrip
  const outward = (segment: Segment, at: 0 | 1) => times(leftOf(tangentAt(segment, at)), side)
  return segments.flatMap((segment, i): readonly RimPiece[] => {
    if (!isWorked(segment)) return []
    const [before, after] = [segments.at(i - 1)!, segments[(i + 1) % segments.length]!]
    const first = mitred(outward(segment, 0), isWorked(before) ? outward(before, 1) : undefined)
    const last = mitred(outward(segment, 1), isWorked(after) ? outward(after, 0) : undefined)
    const points = segment.kind === 'line' ? [segment.from, segment.to] : arcChords(segment, printable)
    const ways = points.map((point, k): Vector => {
      if (k === 0) return first
      if (k === points.length - 1) return last
      return segment.kind === 'line' ? first : radial(segment, point, side)
    })
    const outer = points.map((p, k) => ({ x: p.x + width * ways[k]!.x, y: p.y + width * ways[k]!.y }))
    return points
      .slice(1)
      .map((to, k): RimPiece => ({ inner: [points[k]!, to], outer: [outer[k]!, outer[k + 1]!] }))
  })
}

/** Out of an arc, or toward its centre: whichever is the side of the strip. */
function radial(arc: Extract<Segment, { kind: 'arc' }>, p: Point, side: number): Vector {
  const away = unit({ x: p.x - arc.centre.x, y: p.y - arc.centre.y })
  return times(away, -arc.turn * side)
}

/** A corner that is sharper, as one plus the cosine between the two ways out, is cut off blunt. */
const sharpest = 1 / 8

/** The way to the corner of the edges where two lines of the strip meet, in widths of the strip. */
function mitred(own: Vector, other: Vector | undefined): Vector {
  if (other === undefined) return own
  const open = 1 + own.x * other.x + own.y * other.y
  return open < sharpest ? own : times({ x: own.x + other.x, y: own.y + other.y }, 1 / open)
}

function times({ x, y }: Vector, by: number): Vector {
  return { x: x * by, y: y * by }
}
