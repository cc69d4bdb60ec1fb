import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pointAt } from '../../../src/geometry/measure/along.ts'
import { arc, line, type Segment } from '../../../src/geometry/shape/segment.ts'
import { boxMeetsSegment, stretchMeets } from '../../../src/sheet/label/touch.ts'

const at = fc.integer({ min: -20, max: 20 })
const point = fc.record({ x: at, y: at })
const segment: fc.Arbitrary<Segment> = fc.oneof(
  fc.tuple(point, point).map(([a, b]) => line(a, b)),
  fc
    .tuple(
      point,
      fc.integer({ min: 1, max: 15 }),
      fc.double({ min: 0, max: 6, noNaN: true }),
      fc.double({ min: 0.1, max: 6, noNaN: true }),
      fc.boolean(),
    )
    .map(([centre, radius, start, sweep, left]) => {
      const on = (angle: number) => ({
        x: centre.x + radius * Math.cos(angle),
        y: centre.y + radius * Math.sin(angle),
      })
      return arc(on(start), on(start + (left ? sweep : -sweep)), centre, left ? 1 : -1)
    }),
)

const samples = 2000
/** No two samples of such an edge are farther apart than this. */
const between = (2 * Math.PI * 15) / samples

test('a box meets a line or arc exactly where a point of that is in the box', () => {
  fc.assert(
    fc.property(
      segment,
      point,
      fc.integer({ min: 1, max: 9 }),
      fc.integer({ min: 1, max: 9 }),
      (edge, { x, y }, width, height) => {
        const within = (white: number) =>
          Array.from({ length: samples + 1 }, (_, i) => pointAt(edge, i / samples)).some(
            p =>
              p.x >= x - white && p.x <= x + width + white && p.y >= y - white && p.y <= y + height + white,
          )
        const meets = boxMeetsSegment({ left: x, bottom: y, right: x + width, top: y + height }, edge)
        if (within(-1e-9)) expect(meets).toBe(true)
        if (!within(between)) expect(meets).toBe(false)
      },
    ),
    { numRuns: 500 },
  )
})

test('a leader crosses a line or arc exactly where that passes from one of its sides to the other', () => {
  fc.assert(
    fc.property(segment, point, point, (edge, a, b) => {
      const length = Math.hypot(b.x - a.x, b.y - a.y)
      fc.pre(length > 0)
      /** Along the leader and aside from it, in millimetres. */
      const seen = Array.from({ length: samples + 1 }, (_, i) => {
        const p = pointAt(edge, i / samples)
        const [dx, dy] = [p.x - a.x, p.y - a.y]
        return {
          along: (dx * (b.x - a.x) + dy * (b.y - a.y)) / length,
          aside: ((b.x - a.x) * dy - (b.y - a.y) * dx) / length,
        }
      })
      // an edge that ends on the leader does not pass it, whichever side rounding puts its end on
      const clear = seen.filter(({ aside }) => Math.abs(aside) > 1e-9)
      const passes = (white: number) =>
        clear
          .slice(1)
          .some(
            (p, i) =>
              p.aside > 0 !== clear[i]!.aside > 0 &&
              Math.min(p.along, clear[i]!.along) >= white &&
              Math.max(p.along, clear[i]!.along) <= length - white,
          )
      const near = seen.some(
        ({ along, aside }) => Math.abs(aside) <= between && along >= -between && along <= length + between,
      )
      const crosses = stretchMeets([a, b], edge)
      if (passes(between)) expect(crosses).toBe(true)
      if (!near) expect(crosses).toBe(false)
    }),
    { numRuns: 500 },
  )
})
