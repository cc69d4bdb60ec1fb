import type { Contour, Region } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import type { Segment } from '../../src/geometry/shape/segment.ts'

/**
 * Makes once more what is new in a result, points and edges, and shares what the operation was given, as the result
 * does: the least time that an operation can take which gives its result as objects. What is new is found out before
 * the clock starts.
 */
export function remaker(results: readonly Region[], given: readonly Region[]): () => readonly Contour[] {
  const edges = new Set(contoursOf(given).flatMap(c => c.segments))
  const points = new Set(
    [...edges].flatMap(s => (s.kind === 'arc' ? [s.from, s.to, s.centre] : [s.from, s.to])),
  )
  const outlines = contoursOf(results).map(({ segments }) => ({
    segments,
    edgeIsNew: segments.map(s => !edges.has(s)),
    endIsNew: segments.map(s => !points.has(s.to)),
  }))
  return () =>
    outlines.map(({ segments, edgeIsNew, endIsNew }) => {
      const made = new Array<Segment>(segments.length)
      const start = endIsNew.at(-1)! ? again(segments[0]!.from) : segments[0]!.from
      let from = start
      for (let k = 0; k < segments.length; k++) {
        const s = segments[k]!
        const to = k + 1 === segments.length ? start : endIsNew[k]! ? again(s.to) : s.to
        made[k] = edgeIsNew[k]! ? between(s, from, to) : s
        from = to
      }
      return { segments: made, closed: true }
    })
}

function between(s: Segment, from: Point, to: Point): Segment {
  if (s.kind === 'line') return { kind: 'line', from, to }
  const { centre, radius, turn } = s
  return { kind: 'arc', from, to, centre, radius, turn }
}

function again({ x, y }: Point): Point {
  return { x, y }
}

function contoursOf(regions: readonly Region[]): readonly Contour[] {
  return regions.flatMap(({ outer, holes }) => [outer, ...holes])
}
