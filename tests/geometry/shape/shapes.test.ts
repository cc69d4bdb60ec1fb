import fc from 'fast-check'
import { expect, test } from 'vitest'
import { signedArea } from '../../../src/geometry/measure/area.ts'
import { clockwise, counterClockwise, orientRegion } from '../../../src/geometry/measure/orient.ts'
import { chain } from '../../../src/geometry/shape/chain.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import { mirrorAcross, quarterTurns, scale, shift, turn } from '../../../src/geometry/shape/matrix.ts'
import { polygon, polyline } from '../../../src/geometry/shape/polygon.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { arc, line, sweep } from '../../../src/geometry/shape/segment.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { spans } from '../../../src/geometry/shape/span.ts'
import { transformContour, transformRegion } from '../../../src/geometry/shape/transform.ts'
import { anyRegion, anySimilarity } from '../any-region.ts'
import { expectValue } from '../expect-value.ts'

const at = (x: number, y: number) => ({ x, y })

test('a polygon goes through its corners and back to the first; a polyline stops at the last', () => {
  const corners = [at(0, 0), at(4, 0), at(4, 3)]
  const closed = polygon(corners, ['base', undefined, 'slope'])
  expect(closed.segments.map(s => [s.from, s.to, s.tag])).toEqual([
    [corners[0], corners[1], 'base'],
    [corners[1], corners[2], undefined],
    [corners[2], corners[0], 'slope'],
  ])
  expect(closed.segments[2]!.to).toBe(closed.segments[0]!.from)
  expect(polyline(corners)).toMatchObject({
    closed: false,
    segments: [{ to: corners[1] }, { to: corners[2] }],
  })
  expect(() => polygon([at(0, 0)])).toThrow(RangeError)
  expect(() => circle(at(0, 0), 0)).toThrow(RangeError)
  expect(() => slot(at(0, 0), at(1, 0), Number.NaN)).toThrow(RangeError)
})

test('a slot between two centres in one place is a circle', () => {
  expect(slot(at(3, 4), at(3, 4), 10).outer).toEqual(circle(at(3, 4), 5))
})

test('a chain shares the ends that meet and tells where they do not', () => {
  const a = line(at(0, 0), at(5, 0))
  const b = line(at(5 + 1e-8, 0), at(5, 5))
  const c = line(at(5, 5), at(0, 1e-9))
  const closed = expectValue(chain([a, b, c], true))
  closed.segments.forEach((s, i) => {
    expect(s.to).toBe(closed.segments[(i + 1) % 3]!.from)
  })
  expect(chain([a, c], false)).toMatchObject({
    ok: false,
    fault: { reason: 'gap', facts: { segment: 1, x: 5, y: 5 } },
  })
  expect(chain([a, b], true)).toMatchObject({ ok: false, fault: { reason: 'gap', facts: { segment: 0 } } })
  expect(chain([], true)).toMatchObject({ ok: false, fault: { reason: 'empty' } })
})

test('reversing twice gives the contour back, and once turns its arcs and its area', () => {
  fc.assert(
    fc.property(anyRegion, region => {
      const back = reverseContour(region.outer)
      expect(reverseContour(back)).toEqual(region.outer)
      expect(signedArea(back)).toBeCloseTo(-signedArea(region.outer), 9)
      back.segments.forEach((s, i) => {
        expect(s.to).toBe(back.segments[(i + 1) % back.segments.length]!.from)
      })
    }),
  )
})

test('a region is oriented with its wood on the left', () => {
  const region = { outer: reverseContour(circle(at(0, 0), 9)), holes: [circle(at(0, 0), 3)] }
  const { outer, holes } = orientRegion(region)
  expect(signedArea(outer)).toBeGreaterThan(0)
  expect(signedArea(holes[0]!)).toBeLessThan(0)
  expect(counterClockwise(outer)).toBe(outer)
  expect(clockwise(holes[0]!)).toBe(holes[0])
})

test('a similarity keeps arcs circular and points shared; a mirror image turns the other way', () => {
  fc.assert(
    fc.property(anyRegion, anySimilarity, (region, { matrix, factor }) => {
      const moved = transformRegion(region, matrix)
      const mirrors = matrix.a * matrix.d - matrix.b * matrix.c < 0
      moved.outer.segments.forEach((s, i) => {
        expect(s.to).toBe(moved.outer.segments[(i + 1) % moved.outer.segments.length]!.from)
        const before = region.outer.segments[i]!
        if (s.kind === 'line' || before.kind === 'line') return
        expect(s.radius / before.radius / factor).toBeCloseTo(1, 9)
        expect(s.turn).toBe(mirrors ? -before.turn : before.turn)
        expect(sweep(s)).toBeCloseTo(mirrors ? -sweep(before) : sweep(before), 5)
      })
    }),
  )
})

test('four quarter turns, and two mirrors, give the shape back exactly; a skew is refused', () => {
  const shape = slot(at(1, 2), at(7, 11), 3).outer
  expect(transformContour(transformContour(shape, quarterTurns(1)), quarterTurns(3))).toEqual(shape)
  expect(transformContour(transformContour(shape, mirrorAcross(0)), mirrorAcross(0))).toEqual(shape)
  expect(transformContour(shape, shift(0, 0))).toEqual(shape)
  expect(() => transformContour(shape, scale(1, 2))).toThrow(RangeError)
  expect(() => transformContour(shape, scale(0))).toThrow(RangeError)
  expect(() => transformContour(shape, turn(0.3))).not.toThrow()
})

test('an arc spans the directions it sweeps, its ends included, whichever way it runs', () => {
  const quarter = arc(at(1, 0), at(0, 1), at(0, 0), 1)
  const rest = arc(at(1, 0), at(0, 1), at(0, 0), -1)
  for (const [p, inside] of [
    [at(5, 5), true],
    [at(9, 0), true],
    [at(0, 2), true],
    [at(-1, 1e-9), false],
    [at(3, -1e-9), false],
  ] as const) {
    expect(spans(quarter, p)).toBe(inside)
  }
  for (const [p, inside] of [
    [at(5, 5), false],
    [at(9, 0), true],
    [at(0, 2), true],
    [at(-1, 3), true],
    [at(3, -1e-9), true],
  ] as const) {
    expect(spans(rest, p)).toBe(inside)
  }
  const half = arc(at(1, 0), at(-1, 0), at(0, 0), 1)
  expect([spans(half, at(0, 1)), spans(half, at(0, -1)), spans(half, at(-4, 0))]).toEqual([true, false, true])
})
