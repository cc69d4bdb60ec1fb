import fc from 'fast-check'
import { expect, test } from 'vitest'
import { tangentArcs } from '../../../src/geometry/construct/tangent-arcs.ts'
import { tangentLines } from '../../../src/geometry/construct/tangent-lines.ts'
import type { Disc } from '../../../src/geometry/measure/carrier.ts'
import { segmentLength } from '../../../src/geometry/measure/length.ts'
import { sweep } from '../../../src/geometry/shape/segment.ts'

const disc = (x: number, y: number, radius: number): Disc => ({ centre: { x, y }, radius })

/** Lengths by Pythagoras: outer √(d² − (r₁ − r₂)²), inner √(d² − (r₁ + r₂)²). */
test('the tangents of two discs apart: two outer and two inner ones of known length', () => {
  const found = tangentLines(disc(0, 0, 10), disc(40, 30, 20))
  expect(found.map(t => [t.kind, t.side])).toEqual([
    ['outer', 'left'],
    ['outer', 'right'],
    ['inner', 'left'],
    ['inner', 'right'],
  ])
  expect(segmentLength(found[0]!.line)).toBeCloseTo(Math.sqrt(2500 - 100), 12)
  expect(segmentLength(found[3]!.line)).toBeCloseTo(Math.sqrt(2500 - 900), 12)
})

test('a point has two tangents to a circle, two points the line between them, a disc in another none', () => {
  const found = tangentLines(disc(0, 0, 0), disc(13, 0, 5))
  expect(found).toHaveLength(2)
  for (const { line } of found) expect(segmentLength(line)).toBeCloseTo(12, 12)
  expect(tangentLines(disc(0, 0, 0), disc(3, 4, 0)).map(t => segmentLength(t.line))).toEqual([5])
  expect(tangentLines(disc(0, 0, 2), disc(1, 0, 9))).toEqual([])
  expect(tangentLines(disc(0, 0, 2), disc(0, 0, 2))).toEqual([])
})

const coordinate = fc.double({ min: -50, max: 50, noNaN: true })
const size = fc.double({ min: 0.5, max: 40, noNaN: true })
const anyDisc = fc.tuple(coordinate, coordinate, size).map(([x, y, r]) => disc(x, y, r))

test('every tangent line meets both circles square to their radii, on the side it says', () => {
  fc.assert(
    fc.property(anyDisc, anyDisc, (a, b) => {
      for (const { line, kind, side } of tangentLines(a, b)) {
        const length = segmentLength(line)
        const u = { x: (line.to.x - line.from.x) / length, y: (line.to.y - line.from.y) / length }
        const leftOf = (d: Disc) => u.x * (d.centre.y - line.from.y) - u.y * (d.centre.x - line.from.x)
        expect(leftOf(a)).toBeCloseTo(side === 'left' ? a.radius : -a.radius, 5)
        expect(leftOf(b) * (kind === 'outer' ? 1 : -1)).toBeCloseTo(side === 'left' ? b.radius : -b.radius, 5)
        expect(Math.hypot(line.from.x - a.centre.x, line.from.y - a.centre.y)).toBeCloseTo(a.radius, 9)
        expect(Math.hypot(line.to.x - b.centre.x, line.to.y - b.centre.y)).toBeCloseTo(b.radius, 9)
      }
    }),
  )
})

test('eight arcs of one radius touch two circles apart, each in its own way', () => {
  const found = tangentArcs(disc(0, 0, 10), disc(45, 0, 15), 40)
  expect(found).toHaveLength(8)
  expect(new Set(found.map(t => `${t.first} ${t.second}`)).size).toBe(4)
  // two discs r 10, 30 apart, joined by a fillet r 10 outside both: its centre is 20 from both centres
  const joined = tangentArcs(disc(0, 0, 10), disc(30, 0, 10), 10).filter(
    t => t.first === 'outside' && t.second === 'outside',
  )
  expect(joined.map(t => Math.abs(t.arc.centre.y))).toEqual([Math.sqrt(400 - 225), Math.sqrt(400 - 225)])
  expect(tangentArcs(disc(0, 0, 10), disc(100, 0, 10), 5)).toEqual([])
})

test('every tangent arc touches both circles in one point, from the side it says', () => {
  fc.assert(
    fc.property(anyDisc, anyDisc, size, (a, b, radius) => {
      for (const { arc, first, second } of tangentArcs(a, b, radius)) {
        for (const [d, touch, p] of [
          [a, first, arc.from],
          [b, second, arc.to],
        ] as const) {
          const apart = Math.hypot(arc.centre.x - d.centre.x, arc.centre.y - d.centre.y)
          const wanted =
            touch === 'outside'
              ? radius + d.radius
              : touch === 'around'
                ? radius - d.radius
                : d.radius - radius
          expect(Math.abs(apart - wanted)).toBeLessThan(2e-6)
          expect(Math.abs(Math.hypot(p.x - d.centre.x, p.y - d.centre.y) - d.radius)).toBeLessThan(2e-6)
        }
        expect(Math.abs(sweep(arc))).toBeLessThanOrEqual(Math.PI + 1e-9)
      }
    }),
  )
})
