import type { Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { arc, line, type Segment } from '../../../src/geometry/shape/segment.ts'
import { closed, solid } from './solid.ts'

/** A band of half circles that winds outward: the width of the band is a part `share` of its spacing. */
export function spiral(
  halfTurns: number,
  spacing: number,
  share: number,
  centre: Point = { x: 0, y: 0 },
): Region {
  const { x, y } = centre
  // half circles with centres at x and x + spacing / 2 in turn, radius growing by half the spacing
  const side = (inset: number): Point[] =>
    Array.from({ length: halfTurns + 1 }, (_, k) => {
      const reach = (Math.floor((k + 1) / 2) + 1) * spacing + inset
      return k % 2 === 0 ? { x: x + reach, y } : { x: x + spacing - reach, y }
    })
  const outer = side(spacing * share)
  const inner = side(0)
  const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y })
  const segments: Segment[] = []
  for (let k = 0; k < halfTurns; k++) {
    segments.push(arc(outer[k]!, outer[k + 1]!, middle(outer[k]!, outer[k + 1]!), 1))
  }
  segments.push(line(outer[halfTurns]!, inner[halfTurns]!))
  for (let k = halfTurns; k > 0; k--) {
    segments.push(arc(inner[k]!, inner[k - 1]!, middle(inner[k]!, inner[k - 1]!), -1))
  }
  segments.push(line(inner[0]!, outer[0]!))
  return solid(closed(segments))
}
