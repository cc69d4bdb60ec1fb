import { angleLessSine } from '../measure/area.ts'
import type { Contour } from '../shape/contour.ts'
import type { Segment } from '../shape/segment.ts'
import { angleAlong, type PackedCurve, roleEdge, stride } from './packed-curve.ts'
import type { Ring } from './trim.ts'

/** A contour with the area it goes round (mm², positive counter-clockwise) and its length in mm. */
export type MeasuredContour = {
  readonly contour: Contour
  readonly area: number
  readonly length: number
}

/**
 * The contour of a ring. The offset of an edge takes the tag of that edge.
 *
 * @param edges the edges of the input, by source number
 * @param joinTag the tag of what fills corners and closes ends
 */
export function ringContour(
  curve: PackedCurve,
  ring: Ring,
  edges: readonly Segment[],
  joinTag: string | undefined,
): MeasuredContour {
  const { data, role, source } = curve
  const n = ring.segments.length
  const segments: Segment[] = new Array(n)
  const origin = ring.points[0]!
  let twice = 0
  let length = 0
  for (let i = 0; i < n; i++) {
    const k = ring.segments[i]!
    const from = ring.points[i]!
    const to = ring.points[i + 1 === n ? 0 : i + 1]!
    const at = k * stride
    const tag = role[k] === roleEdge ? edges[source[k]!]!.tag : joinTag
    twice += (from.x - origin.x) * (to.y - origin.y) - (from.y - origin.y) * (to.x - origin.x)
    const turn = data[at + 7]!
    if (turn === 0) {
      segments[i] = tag === undefined ? { kind: 'line', from, to } : { kind: 'line', from, to, tag }
      length += Math.abs(to.x - from.x) + Math.abs(to.y - from.y)
      continue
    }
    const cx = data[at + 4]!
    const cy = data[at + 5]!
    const radius = data[at + 6]!
    const angle = angleAlong(turn, from.x - cx, from.y - cy, to.x - cx, to.y - cy)
    twice += turn * radius * radius * angleLessSine(angle)
    length += radius * angle
    const centre = { x: cx, y: cy }
    const way = turn > 0 ? 1 : -1
    segments[i] =
      tag === undefined
        ? { kind: 'arc', from, to, centre, radius, turn: way }
        : { kind: 'arc', from, to, centre, radius, turn: way, tag }
  }
  return { contour: { segments, closed: true }, area: twice / 2, length }
}
