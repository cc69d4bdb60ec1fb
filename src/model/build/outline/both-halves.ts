import type { Source } from '../../../finding/source.ts'
import type { Easing } from '../../../geometry/construct/corner.ts'
import { type Matrix, mirrorAcross } from '../../../geometry/shape/matrix.ts'
import { distance, type Point } from '../../../geometry/shape/point.ts'
import { reverseSegment } from '../../../geometry/shape/reverse.ts'
import { type Segment, sweep, withEnds, withTag } from '../../../geometry/shape/segment.ts'
import { transformContour } from '../../../geometry/shape/transform.ts'
import { coincident } from '../../../number/tolerance.ts'

/** What becomes of a corner; what it is called, and where the plan says it. */
export type CornerMade = { readonly easing: Easing; readonly name: string; readonly source: Source }

/** An edge with what becomes of the corner that it starts in. */
export type CorneredEdge = { readonly segment: Segment; readonly corner: CornerMade | undefined }

/** How far a point lies from the axis through another one, in millimetres. */
export function awayFromAxis(p: Point, start: Point, symmetric: 'left-right' | 'top-bottom'): number {
  return symmetric === 'left-right' ? Math.abs(p.x - start.x) : Math.abs(p.y - start.y)
}

/**
 * The half and its mirror image, as one way round. The half leads from the axis back to it; `last` is what becomes
 * of the corner at its end. An edge that crosses the axis straight on is one with its mirror image.
 *
 *        ╭──┐ ┊            ╭──┬──╮
 *        │    ┊     →      │     │     the mirror image is gone along backwards
 *        └────┊            └─────┘
 */
export function bothHalves(
  half: readonly CorneredEdge[],
  last: CornerMade | undefined,
  start: Point,
  symmetric: 'left-right' | 'top-bottom',
): readonly CorneredEdge[] {
  const matrix: Matrix =
    symmetric === 'left-right' ? mirrorAcross(start.x) : { a: 1, b: 0, c: 0, d: -1, e: 0, f: 2 * start.y }
  const images = transformContour({ segments: half.map(e => e.segment), closed: false }, matrix).segments
  const mirrored = images
    .map((image, i): CorneredEdge => {
      const corner = i + 1 < half.length ? half[i + 1]!.corner : last
      return { segment: withMirroredName(reverseSegment(image)), corner: corner && mirroredName(corner) }
    })
    .toReversed()
  const edges: CorneredEdge[] = [...half]
  const [atEnd, ...others] = mirrored
  const joined = last === undefined && atEnd && joinedAcross(half.at(-1)!.segment, atEnd.segment)
  if (joined) edges[edges.length - 1] = { ...edges.at(-1)!, segment: joined }
  edges.push(...(joined ? others : mirrored))

  const first = edges[0]!
  const closing = edges.at(-1)!
  const closed =
    edges.length > 1 && first.corner === undefined && joinedAcross(closing.segment, first.segment)
  if (!closed) return edges
  // the name is that of the half's own edge
  const { tag } = first.segment
  const whole = tag === undefined ? closed : withTag(closed, tag)
  return [{ segment: whole, corner: closing.corner }, ...edges.slice(1, -1)]
}

function withMirroredName(s: Segment): Segment {
  return s.tag === undefined ? s : withTag(s, `${s.tag}-mirrored`)
}

function mirroredName(corner: CornerMade): CornerMade {
  const { easing } = corner
  return easing.tag === undefined
    ? corner
    : { ...corner, easing: { ...easing, tag: `${easing.tag}-mirrored` } }
}

/** Two edges that are one, where a line runs straight on or an arc about the same centre. */
function joinedAcross(a: Segment, b: Segment): Segment | undefined {
  if (a.kind === 'line' && b.kind === 'line') {
    const whole = distance(a.from, b.to)
    const aside = (a.to.x - a.from.x) * (b.to.y - a.from.y) - (a.to.y - a.from.y) * (b.to.x - a.from.x)
    const forward = (a.to.x - a.from.x) * (b.to.x - b.from.x) + (a.to.y - a.from.y) * (b.to.y - b.from.y) > 0
    return forward && Math.abs(aside) <= coincident * whole ? withEnds(a, a.from, b.to) : undefined
  }
  if (a.kind === 'arc' && b.kind === 'arc' && a.turn === b.turn) {
    const same = distance(a.centre, b.centre) <= coincident
    const both = Math.abs(sweep(a)) + Math.abs(sweep(b))
    return same && distance(a.from, b.to) > coincident && both < 2 * Math.PI
      ? withEnds(a, a.from, b.to)
      : undefined
  }
  return undefined
}
