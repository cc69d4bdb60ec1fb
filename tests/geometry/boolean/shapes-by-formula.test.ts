import { expect, test } from 'vitest'
import { difference, exclusiveOr, intersection, union } from '../../../src/geometry/boolean/boolean.ts'
import { regionsByWinding } from '../../../src/geometry/boolean/overlay.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { turn } from '../../../src/geometry/shape/matrix.ts'
import type { Outcome } from '../../../src/geometry/shape/outcome.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformContour } from '../../../src/geometry/shape/transform.ts'
import { solid } from '../generate/solid.ts'
import { contoursOf, totalArea } from './laws.ts'

const box = (left: number, bottom: number, right: number, top: number) =>
  rectangle({ left, bottom, right, top })
const disc = (x: number, y: number, radius: number): Region => solid(circle({ x, y }, radius))

function made(outcome: Outcome<readonly Region[]>): readonly Region[] {
  if (!outcome.ok) throw new Error(outcome.fault.reason)
  return outcome.value
}

const shapeOf = (regions: readonly Region[]) =>
  regions.map(r => [r.outer.segments.length, ...r.holes.map(h => h.segments.length)])

test('two overlapping squares give the areas that they should', () => {
  const [a, b] = [[box(0, 0, 10, 10)], [box(5, 5, 15, 15)]]
  expect(totalArea(made(union(a, b)))).toBe(175)
  expect(totalArea(made(intersection(a, b)))).toBe(25)
  expect(totalArea(made(difference(a, b)))).toBe(75)
  expect(totalArea(made(exclusiveOr(a, b)))).toBe(150)
})

test('the lens of two circles of radius 10 set 10 apart has 122.83697 mm²', () => {
  // by the formula for two circular segments; the value in references.md
  const lens = made(intersection([disc(0, 0, 10)], [disc(10, 0, 10)]))
  expect(totalArea(lens)).toBeCloseTo(2 * 100 * (Math.PI / 3) - 100 * Math.sin((2 * Math.PI) / 3), 9)
  expect(totalArea(lens)).toBeCloseTo(122.83697, 5)
  expect(lens).toHaveLength(1)
  // two whole arcs, each with a vertex where its circle starts or is half round
  expect(lens[0]!.outer.segments.map(s => s.kind)).toEqual(['arc', 'arc', 'arc', 'arc'])
})

test('a slot is the union of a rectangle and two discs: 1114.1593 mm², its straight sides whole', () => {
  const parts = [box(0, -10, 40, 10), disc(0, 0, 10), disc(40, 0, 10)]
  const whole = made(union(parts))
  expect(totalArea(whole)).toBeCloseTo(1114.1593, 4)
  expect(totalArea(made(difference(whole, [slot({ x: 0, y: 0 }, { x: 40, y: 0 }, 20)])))).toBeLessThan(1e-4)
})

test('squares with a common side become one, and their corners on it stay', () => {
  const whole = made(union([box(0, 0, 10, 10)], [box(10, 0, 20, 10)]))
  expect(totalArea(whole)).toBe(200)
  expect(shapeOf(whole)).toEqual([[6]])
  expect(made(intersection([box(0, 0, 10, 10)], [box(10, 0, 20, 10)]))).toEqual([])
})

test('squares that share a part of a side become one', () => {
  const whole = made(union([box(0, 0, 10, 10)], [box(10, 4, 20, 20)]))
  expect(totalArea(whole)).toBe(260)
  expect(whole).toHaveLength(1)
})

test('squares that touch in a corner stay two and share the point', () => {
  const two = made(union([box(0, 0, 10, 10)], [box(10, 10, 20, 20)]))
  expect(shapeOf(two)).toEqual([[4], [4]])
  const at = two.map(r => r.outer.segments.map(s => s.from).find(p => p.x === 10 && p.y === 10))
  expect(at[0]).toBe(at[1])
})

test('a shape with itself: the union is it, the difference nothing', () => {
  const a = [slot({ x: 0, y: 0 }, { x: 40, y: 0 }, 20)]
  expect(made(union(a, a))).toEqual(a)
  expect(made(intersection(a, a))).toEqual(a)
  expect(made(difference(a, a))).toEqual([])
  expect(made(exclusiveOr(a, a))).toEqual([])
})

test('a disc cut into another way of quarters is the same disc', () => {
  const turned = solid(transformContour(circle({ x: 0, y: 0 }, 10), turn(1)))
  expect(totalArea(made(union([disc(0, 0, 10)], [turned])))).toBeCloseTo(100 * Math.PI, 9)
  expect(made(exclusiveOr([disc(0, 0, 10)], [turned]))).toEqual([])
})

test('discs that touch from outside stay two; one that touches from inside leaves a hole with a common point', () => {
  expect(made(union([disc(0, 0, 10)], [disc(20, 0, 10)]))).toHaveLength(2)
  const crescent = made(difference([disc(0, 0, 10)], [disc(5, 0, 5)]))
  expect(totalArea(crescent)).toBeCloseTo(75 * Math.PI, 9)
  expect(crescent.map(r => r.holes.length)).toEqual([1])
})

test('a disc drawn into a square touches it four times and leaves four corners', () => {
  const corners = made(difference([box(-10, -10, 10, 10)], [disc(0, 0, 10)]))
  expect(shapeOf(corners)).toEqual([[3], [3], [3], [3]])
  expect(totalArea(corners)).toBeCloseTo(400 - 100 * Math.PI, 9)
})

test('a hole is cut, filled again, and holds an island', () => {
  const plate = [box(0, 0, 30, 30)]
  const ring = made(difference(plate, [box(5, 5, 25, 25)]))
  expect(shapeOf(ring)).toEqual([[4, 4]])
  const island = made(union(ring, [box(10, 10, 20, 20)]))
  expect(shapeOf(island)).toEqual([[4, 4], [4]])
  expect(made(union(island, [box(5, 5, 25, 25)])).map(r => r.holes.length)).toEqual([0])
})

test('the direction of a contour means nothing, its role everything', () => {
  const ring: Region = { outer: circle({ x: 0, y: 0 }, 10), holes: [circle({ x: 0, y: 0 }, 5)] }
  const turned: Region = { outer: reverseContour(ring.outer), holes: [reverseContour(ring.holes[0]!)] }
  for (const r of [ring, turned]) {
    expect(totalArea(made(intersection([r], [box(-20, 0, 20, 20)])))).toBeCloseTo(37.5 * Math.PI, 9)
  }
})

test('nothing united with nothing is nothing', () => {
  expect(made(union([], []))).toEqual([])
  expect(made(intersection([box(0, 0, 1, 1)], []))).toEqual([])
  expect(made(difference([box(0, 0, 1, 1)], []))).toEqual([box(0, 0, 1, 1)])
})

test('edges keep their tags, and those cut off another shape take its tags', () => {
  const notch = solid(circle({ x: 10, y: 5 }, 2, 'bore'))
  const cut = made(difference([box(0, 0, 10, 10)], [notch]))
  const tags = cut[0]!.outer.segments.map(s => `${s.kind} ${s.tag}`)
  expect(new Set(tags)).toEqual(new Set(['line bottom', 'line right', 'line top', 'line left', 'arc bore']))
})

test('an edge is whole again where a cut through it has gone', () => {
  const whole = made(union([box(0, 0, 10, 10)], [box(2, 2, 8, 8)]))
  expect(shapeOf(whole)).toEqual([[4]])
  const bumped = made(union([box(0, 0, 10, 10)], [box(4, 5, 6, 15)]))
  // the top is parted by the bump, the bump's hidden part is gone
  expect(shapeOf(bumped)).toEqual([[8]])
})

test('a bow tie wound once left and once right keeps its left half by winding above 0, both by not 0', () => {
  const tie = polygon([
    { x: 0, y: 0 },
    { x: 10, y: 10 },
    { x: 10, y: 0 },
    { x: 0, y: 10 },
  ])
  expect(totalArea(made(regionsByWinding([tie], w => w > 0)))).toBe(25)
  expect(made(regionsByWinding([tie], w => w !== 0))).toHaveLength(2)
})

test('a contour wound twice is inside by winding and outside by the even-odd rule', () => {
  const twice = [circle({ x: 0, y: 0 }, 5), circle({ x: 1, y: 0 }, 5)]
  const once = made(regionsByWinding(twice, w => w > 0))
  const odd = made(regionsByWinding(twice, w => (w & 1) === 1))
  const lens = totalArea(made(intersection([solid(twice[0]!)], [solid(twice[1]!)])))
  expect(totalArea(once)).toBeCloseTo(50 * Math.PI - lens, 9)
  expect(totalArea(odd)).toBeCloseTo(50 * Math.PI - 2 * lens, 9)
})

test('a contour with a gap is a fault that names the segment and holds the input', () => {
  const whole = box(0, 0, 10, 10)
  const gap: Region = { ...whole, outer: { segments: whole.outer.segments.slice(0, 3), closed: true } }
  const outcome = union([gap])
  expect(outcome.ok).toBe(false)
  if (outcome.ok) return
  expect(outcome.fault.facts).toEqual({ contour: 0, segment: 2 })
  expect(outcome.fault.input).toEqual({ first: [gap], second: [] })
})

test('a coordinate that is no number is a fault', () => {
  const bad = solid(
    polygon([
      { x: 0, y: 0 },
      { x: Number.NaN, y: 0 },
      { x: 1, y: 1 },
    ]),
  )
  expect(union([bad]).ok).toBe(false)
})

test('neighbours share their points', () => {
  for (const { segments } of contoursOf(made(union([disc(0, 0, 10), box(0, 0, 20, 5)])))) {
    segments.forEach((s, k) => {
      expect(segments[(k + 1) % segments.length]!.from).toBe(s.to)
    })
  }
})

test('of 1,600 islands, rings in holes and parts beside parts none is lost and none filled', () => {
  const n = 40
  const grid = Array.from({ length: n * n }, (_, k) => ({ x: 10 * (k % n), y: 10 * Math.floor(k / n) }))
  const plate = [box(-10, -10, 10 * n, 10 * n)]
  const sieve = made(
    difference(
      plate,
      grid.map(({ x, y }) => disc(x, y, 4)),
    ),
  )
  expect(sieve.map(r => r.holes.length)).toEqual([n * n])
  const ring = ({ x, y }: { x: number; y: number }): Region => ({
    outer: circle({ x, y }, 3),
    holes: [circle({ x, y }, 1)],
  })
  const whole = made(union(sieve, grid.map(ring)))
  expect(whole.map(r => r.holes.length).sort((a, b) => a - b)).toEqual([...grid.map(() => 1), n * n])
  expect(totalArea(whole)).toBeCloseTo(410 * 410 - n * n * Math.PI * (16 - 9 + 1), 4)
})

test('of 60 rings about one centre every one is a region of its own', () => {
  const discs = Array.from({ length: 120 }, (_, k) => disc(0, 0, k + 1).outer)
  const rings = made(regionsByWinding(discs, w => (w & 1) === 1 && w < 120))
  const none = made(regionsByWinding(discs, w => w > 119))
  expect(rings).toHaveLength(60)
  expect(totalArea(none)).toBeCloseTo(Math.PI, 9)
})
