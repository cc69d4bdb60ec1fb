import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Meeting, meetings } from '../../../src/geometry/intersect/segments.ts'
import { pointAt } from '../../../src/geometry/measure/along.ts'
import { nearestOnSegment } from '../../../src/geometry/measure/nearest.ts'
import { distance, type Point, point } from '../../../src/geometry/shape/point.ts'
import { arc, line, type Segment } from '../../../src/geometry/shape/segment.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import { bow } from '../generate/bow.ts'

const places = (found: readonly Meeting[]) =>
  found.map(m => (m.kind === 'overlap' ? [m.kind, m.from, m.to] : [m.kind, m.point]))

test('two lines cross where they cross, and say how far along each', () => {
  const found = meetings(line(point(0, 0), point(10, 0)), line(point(2, -1), point(2, 3)))
  expect(found).toEqual([{ kind: 'cross', point: { x: 2, y: 0 }, onFirst: 0.2, onSecond: 0.25 }])
})

test('lines that would cross beyond their ends do not meet', () => {
  expect(meetings(line(point(0, 0), point(1, 0)), line(point(2, -1), point(2, 3)))).toEqual([])
})

test('an end on a line touches it, within the coincident distance', () => {
  const base = line(point(0, 0), point(10, 0))
  expect(places(meetings(base, line(point(4, 0), point(4, 5))))).toEqual([['touch', { x: 4, y: 0 }]])
  expect(places(meetings(base, line(point(4, coincident / 2), point(4, 5))))).toHaveLength(1)
  expect(meetings(base, line(point(4, 2 * coincident), point(4, 5)))).toEqual([])
})

test('collinear lines overlap along what they share, whichever way they run', () => {
  const base = line(point(0, 0), point(10, 0))
  const other = line(point(15, 0), point(6, 0))
  expect(meetings(base, other)).toEqual([
    { kind: 'overlap', from: point(6, 0), to: point(10, 0), onFirst: [0.6, 1], onSecond: [1, 5 / 9] },
  ])
  expect(meetings(base, line(point(11, 0), point(15, 0)))).toEqual([])
  expect(places(meetings(base, line(point(10, 0), point(15, 0))))).toEqual([['touch', point(10, 0)]])
})

test('a line crosses a half circle once or twice, and a tangent touches it once', () => {
  const half = arc(point(5, 0), point(-5, 0), point(0, 0), 1)
  expect(places(meetings(line(point(-9, 3), point(9, 3)), half))).toEqual([
    ['cross', { x: -4, y: 3 }],
    ['cross', { x: 4, y: 3 }],
  ])
  expect(places(meetings(line(point(3, -9), point(3, 9)), half))).toEqual([['cross', { x: 3, y: 4 }]])
  const grazing = meetings(line(point(-9, 5), point(9, 5)), half)
  expect(places(grazing)).toEqual([['touch', { x: 0, y: 5 }]])
})

test('a graze is one touch on both sides of rounding', () => {
  const half = arc(point(5, 0), point(-5, 0), point(0, 0), 1)
  for (const hair of [-coincident / 2, -1e-12, 0, 1e-12, coincident / 2]) {
    const found = meetings(line(point(-9, 5 + hair), point(9, 5 + hair)), half)
    expect(found.map(m => m.kind)).toEqual(['touch'])
  }
  expect(meetings(line(point(-9, 5.00001), point(9, 5.00001)), half)).toEqual([])
  expect(meetings(line(point(-9, 4.99999), point(9, 4.99999)), half)).toHaveLength(2)
})

test('two arcs cross in the points where their circles do, if both reach there', () => {
  // circles of radius 5 with centres 6 apart meet at (3, ±4)
  const right = arc(point(5, 0), point(-5, 0), point(0, 0), 1)
  const left = arc(point(11, 0), point(1, 0), point(6, 0), 1)
  expect(places(meetings(right, left))).toEqual([['cross', { x: 3, y: 4 }]])
  const lower = arc(point(1, 0), point(11, 0), point(6, 0), 1)
  expect(meetings(right, lower)).toEqual([])
})

test('arcs of one circle overlap along what they share; two halves touch in both ends', () => {
  const upper = arc(point(5, 0), point(-5, 0), point(0, 0), 1)
  const quarter = arc(point(0, 5), point(0, -5), point(0, 0), 1)
  expect(places(meetings(upper, quarter))).toEqual([['overlap', point(0, 5), point(-5, 0)]])
  const lower = arc(point(-5, 0), point(5, 0), point(0, 0), 1)
  expect(places(meetings(upper, lower))).toEqual([
    ['touch', point(5, 0)],
    ['touch', point(-5, 0)],
  ])
})

const coordinate = fc.integer({ min: -40, max: 40 })
const place = fc.record({ x: coordinate, y: coordinate })
const edge = fc
  .tuple(place, place, fc.double({ min: -0.6, max: 0.6, noNaN: true }), fc.boolean())
  .filter(([a, b, share]) => distance(a, b) > 1 && Math.abs(share) > 0.01)
  .map(([a, b, share, straight]): Segment => (straight ? line(a, b) : bow(a, b, share * distance(a, b))))

test('every meeting lies on both edges at the stated shares', () => {
  fc.assert(
    fc.property(edge, edge, (first, second) => {
      const near = (s: Segment, p: Point) => nearestOnSegment(s, p).distance <= 2 * coincident
      for (const m of meetings(first, second)) {
        const ends =
          m.kind === 'overlap'
            ? ([
                [m.from, m.onFirst[0], m.onSecond[0]],
                [m.to, m.onFirst[1], m.onSecond[1]],
              ] as const)
            : ([[m.point, m.onFirst, m.onSecond]] as const)
        for (const [p, t, u] of ends) {
          expect(near(first, p) && near(second, p)).toBe(true)
          expect(distance(pointAt(first, t), p)).toBeLessThan(3 * coincident)
          expect(distance(pointAt(second, u), p)).toBeLessThan(3 * coincident)
        }
      }
    }),
    { numRuns: 2000 },
  )
})

test('no crossing is missed: a finely sampled edge changes sides only where there is a meeting', () => {
  fc.assert(
    fc.property(edge, edge, (first, second) => {
      if (second.kind !== 'arc') return
      // inside or outside the circle of the second, seen only where its arc is
      const found = meetings(first, second)
      const steps = 400
      const side = (t: number) => Math.sign(distance(pointAt(first, t), second.centre) - second.radius)
      for (let k = 0; k < steps; k++) {
        const [t, u] = [k / steps, (k + 1) / steps]
        if (side(t) === side(u)) continue
        const p = pointAt(first, (t + u) / 2)
        const step = distance(pointAt(first, t), pointAt(first, u))
        const { point: foot } = nearestOnSegment(second, p)
        // an end of the arc this near may lie on either side of the crossing
        const nearEnd = Math.min(distance(foot, second.from), distance(foot, second.to)) < 20 * step
        if (distance(foot, p) > step || nearEnd) continue
        expect(found.some(m => m.kind === 'overlap' || distance(m.point, p) < 20 * step)).toBe(true)
      }
    }),
    { numRuns: 500 },
  )
})
