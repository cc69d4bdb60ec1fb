import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ellipse } from '../../../src/geometry/construct/ellipse.ts'
import { regularPolygon } from '../../../src/geometry/construct/regular.ts'
import { pointAt, tangentAt } from '../../../src/geometry/measure/along.ts'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { segmentLength } from '../../../src/geometry/measure/length.ts'
import { type Neck, narrowestNeck } from '../../../src/geometry/measure/neck.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import { apply, turn } from '../../../src/geometry/shape/matrix.ts'
import { between, type Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { arc, line } from '../../../src/geometry/shape/segment.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { anyOutline, anySimilarity } from '../any-region.ts'
import { expectValue } from '../expect-value.ts'

const solid = (outer: Contour): Region => ({ outer, holes: [] })
const points = (...xy: readonly number[]): Point[] =>
  Array.from({ length: xy.length / 2 }, (_, i) => ({ x: xy[2 * i]!, y: xy[2 * i + 1]! }))

/** A bar 100 × 40 with a round bite of radius r from above and from below at x = 50; what is left is 40 − 2r. */
function bitten(r: number): Region {
  const [a, b, c, d, e, f, g, h] = points(
    0,
    0,
    50 - r,
    0,
    50 + r,
    0,
    100,
    0,
    100,
    40,
    50 + r,
    40,
    50 - r,
    40,
    0,
    40,
  )
  const low = { x: 50, y: 0 }
  const high = { x: 50, y: 40 }
  const segments = [
    line(a!, b!),
    arc(b!, c!, low, -1),
    line(c!, d!),
    line(d!, e!),
    line(e!, f!),
    arc(f!, g!, high, -1),
    line(g!, h!),
    line(h!, a!),
  ]
  return solid({ segments, closed: true })
}

const hook = solid(polygon(points(0, 0, 60, 0, 60, 50, 45, 50, 45, 9, 20, 9, 20, 50, 0, 50)))
const notched = solid(polygon(points(0, 0, 100, 0, 100, 30, 60, 30, 50, 12, 40, 30, 0, 30)))
const twoNotches = solid(
  polygon(points(0, 0, 30, 0, 40, 10, 50, 0, 100, 0, 100, 30, 60, 30, 52, 15, 45, 30, 0, 30)),
)
const openRing = (): Region => {
  const centre = { x: 0, y: 0 }
  const [a, b, c, d] = points(50, 0, 0, 50, 0, 38, 38, 0)
  return solid({
    segments: [arc(a!, b!, centre, 1), line(b!, c!), arc(c!, d!, centre, -1), line(d!, a!)],
    closed: true,
  })
}

/** Width in mm and the middle of the cut, by construction; `undefined`: no neck. */
const known: readonly [string, Region, number | undefined, Point?][] = [
  ['a rectangle', rectangle({ left: 0, bottom: 0, right: 100, top: 20 }), 20, { x: 50, y: 10 }],
  ['a slot', slot({ x: 0, y: 0 }, { x: 60, y: 80 }, 12), 12, { x: 30, y: 40 }],
  ['a bar with two round bites', bitten(15), 10, { x: 50, y: 20 }],
  ['a hook with a thin back', hook, 9, { x: 32.5, y: 4.5 }],
  ['a bar with a pointed notch', notched, 12, { x: 50, y: 6 }],
  ['a bar with two pointed notches that nearly meet', twoNotches, 17 * Math.SQRT1_2, { x: 47.75, y: 10.75 }],
  ['a quarter of a ring', openRing(), 12, { x: 44 * Math.SQRT1_2, y: 44 * Math.SQRT1_2 }],
  ['a hexagon', solid(regularPolygon({ x: 0, y: 0 }, 6, { acrossFlats: 17 })), 17, { x: 0, y: 0 }],
  ['a triangle', solid(polygon(points(0, 0, 50, 0, 20, 30))), undefined],
  ['a circle', solid(circle({ x: 3, y: 4 }, 10)), undefined],
  ['an ellipse', solid(expectValue(ellipse({ x: 0, y: 0 }, 40, 20, 0.4, 0.001))), undefined],
]

test.each(known)('the narrowest neck of %s', (_, region, width, at) => {
  const neck = narrowestNeck(region)
  if (width === undefined) return expect(neck).toBeUndefined()
  expect(neck!.width).toBeCloseTo(width, 10)
  expect(neck!.at.x).toBeCloseTo(at!.x, 10)
  expect(neck!.at.y).toBeCloseTo(at!.y, 10)
})

test('a neck tells the direction across it and the edges it lies between, in the numbers of the given contour', () => {
  const neck = narrowestNeck(bitten(15))!
  expect(Math.abs(Math.sin(neck.direction))).toBeCloseTo(1, 12)
  expect([neck.first.segment, neck.second.segment].sort()).toEqual([1, 5])
  const turned = { outer: reverseContour(bitten(15).outer), holes: [] }
  const same = narrowestNeck(turned)!
  expect([same.first.segment, same.second.segment].sort()).toEqual([2, 6])
})

test('wood between a hole and the outline is a wall, not a neck; a thin tongue into a hole is a neck', () => {
  const frame = rectangle({ left: 0, bottom: 0, right: 100, top: 60 })
  const drilled = { ...frame, holes: [circle({ x: 50, y: 5 }, 4)] }
  // the middle is blocked: the cut moves to the middle of what is free on one side
  expect(narrowestNeck(drilled)!.width).toBeCloseTo(60, 10)
  expect(narrowestNeck(drilled)!.at).toEqual({ x: 23, y: 30 })
  const fork = polygon(points(20, 10, 80, 10, 80, 50, 53, 50, 53, 20, 47, 20, 47, 50, 20, 50))
  expect(narrowestNeck({ ...frame, holes: [fork] })!.width).toBeCloseTo(6, 10)
})

test('a cut that crosses a hole is no neck', () => {
  // the bar's waist is all hole: what is left are walls, and the full width beside it
  const bar = { ...bitten(15), holes: [circle({ x: 50, y: 20 }, 3)] }
  expect(narrowestNeck(bar)!.width).toBeGreaterThan(10)
})

test('a neck follows a turn, mirror, shift, scale and reversal', () => {
  const shape = fc.constantFrom(bitten(15), hook, notched, twoNotches, openRing())
  fc.assert(
    fc.property(shape, anySimilarity, fc.boolean(), (region, { matrix, factor }, reversed) => {
      const before = narrowestNeck(region)!
      const moved = transformRegion(region, matrix)
      const after = narrowestNeck(reversed ? { outer: reverseContour(moved.outer), holes: [] } : moved)!
      expect(Math.abs(after.width - before.width * factor)).toBeLessThan(1e-7)
      const at = apply(matrix, before.at)
      expect(Math.hypot(after.at.x - at.x, after.at.y - at.y)).toBeLessThan(1e-6)
    }),
  )
})

/** Whether a cut stays inside: looked at in 200 places. */
function staysInside(region: Region, a: Point, b: Point): boolean {
  for (let i = 1; i < 200; i++) {
    const p = { x: a.x + ((b.x - a.x) * i) / 200, y: a.y + ((b.y - a.y) * i) / 200 }
    if (pointInRegion(region, p) !== 'inside') return false
  }
  return true
}

/** Whether sliding an end a little along the boundary, either way, makes a neck's cut no shorter. */
function cannotBeShortened(region: Region, neck: Neck): boolean {
  const { segments } = region.outer
  const step = 1e-3
  const nearby = ({ segment }: { segment: number }, p: Point): Point[] =>
    [-1, 0, 1].flatMap(k => {
      const s = segments.at((segment + k) % segments.length)!
      const count = Math.ceil(segmentLength(s) / step)
      const near: Point[] = []
      for (let i = 0; i <= count; i++) {
        const q = pointAt(s, i / count)
        if (Math.hypot(q.x - p.x, q.y - p.y) < 4 * step) near.push(q)
      }
      return near
    })
  const a = nearby(neck.first, neck.first.point)
  const b = nearby(neck.second, neck.second.point)
  // rounding, and nothing else, may find less
  return a.every(p => b.every(q => Math.hypot(q.x - p.x, q.y - p.y) > neck.width - 1e-9))
}

/** All pairs of samples that no neighbouring pair is nearer than, apart along the boundary: the width of the best. */
function sampledNeck(region: Region, step: number): number | undefined {
  const samples = region.outer.segments.flatMap(s => {
    const count = Math.ceil(segmentLength(s) / step)
    return Array.from({ length: count }, (_, i) => ({ p: pointAt(s, i / count), t: tangentAt(s, i / count) }))
  })
  const n = samples.length
  const away = (i: number, j: number) => {
    const p = samples[(i + n) % n]!.p
    const q = samples[(j + n) % n]!.p
    return Math.hypot(q.x - p.x, q.y - p.y)
  }
  let best: number | undefined
  for (let i = 0; i < n; i++) {
    for (let j = i + 3; j < n - 3 + Math.min(i, 3); j++) {
      const d = away(i, j)
      if (best !== undefined && d >= best) continue
      const neighbours = [-1, 0, 1].flatMap(a => [-1, 0, 1].map(b => away(i + a, j + b)))
      if (d > Math.min(...neighbours)) continue
      const p = samples[i]!
      const q = samples[j]!
      const way = between(p.p, q.p)
      const leavesLeft = p.t.x * way.y - p.t.y * way.x > 0 && q.t.x * -way.y - q.t.y * -way.x > 0
      if (leavesLeft && staysInside(region, p.p, q.p)) best = d
    }
  }
  return best
}

test('the neck of a rough outline lies inside, cannot be shortened, and dense sampling finds none narrower', () => {
  const step = 1
  fc.assert(
    fc.property(anyOutline, outer => {
      const region = solid(outer)
      const neck = narrowestNeck(region)
      const sampled = sampledNeck(region, step)
      if (neck !== undefined) {
        expect(staysInside(region, neck.first.point, neck.second.point)).toBe(true)
        expect(cannotBeShortened(region, neck)).toBe(true)
      }
      // a sampled cut's ends are within half a step of a true one's; samples also stop at places where the
      // true cut could still slide by less than a step, so only a neck that is missed by more counts
      if (sampled !== undefined && neck !== undefined) expect(neck.width).toBeLessThan(sampled + step)
    }),
    { numRuns: 20 },
  )
})

/** The outline with the edge parted where the cut's ends lie on it, unless that is its end. */
function partedAt(outer: Contour, ...places: readonly Neck['first'][]): Contour {
  const segments = outer.segments.flatMap((s, i) => {
    const place = places.find(({ segment }) => segment === i)
    if (place === undefined || segmentLength(s) < 1e-3) return [s]
    const at = place.point
    const beside = (p: Point) => Math.hypot(at.x - p.x, at.y - p.y) < 1e-4
    if (beside(s.from) || beside(s.to)) return [s]
    if (s.kind === 'line') return [line(s.from, at), line(at, s.to)]
    return [arc(s.from, at, s.centre, s.turn), arc(at, s.to, s.centre, s.turn)]
  })
  return { segments, closed: true }
}

test('a joint where a cut ends changes nothing: it is told by its distance, not by rounding', () => {
  fc.assert(
    fc.property(anyOutline, outer => {
      const neck = narrowestNeck(solid(outer))
      fc.pre(neck !== undefined)
      for (const places of [[neck.first], [neck.second], [neck.first, neck.second]]) {
        const again = narrowestNeck(solid(partedAt(outer, ...places)))
        expect(Math.abs(again!.width - neck.width)).toBeLessThan(1e-9)
      }
    }),
  )
  // the joint of two lines right below the bottom of a bite from above
  const [a, b, c, d, e, f, g] = points(0, 0, 50, 0, 100, 0, 100, 40, 60, 40, 40, 40, 0, 40)
  const bite = arc(e!, f!, { x: 50, y: 40 }, -1)
  const jointed = [line(a!, b!), line(b!, c!), line(c!, d!), line(d!, e!), bite, line(f!, g!), line(g!, a!)]
  const widths = [0, 0.3, 1, 2, 3].map(angle => {
    const turned = transformRegion(solid({ segments: jointed, closed: true }), turn(angle))
    return narrowestNeck(turned)!.width
  })
  for (const width of widths) expect(width).toBeCloseTo(30, 9)
})

test('a foot that rounding puts beside the end of an edge is no neck when the cut gets shorter round that corner', () => {
  // across from the corner at (−32, −24) the foot on the edge of (32, 24) lies 1e-13 mm before its end
  const p = points(
    40.00000105146249,
    0,
    32.3606797749979,
    23.511410091698927,
    12.360679774997898,
    38.04226065180614,
  )
  const q = points(-18.13302378336238, 55.80770877726174, -32.36067977499789, 23.51141009169893, -40, 0)
  const r = points(-32.360679774997955, -23.511410091698963, -12.360679774997902, -38.04226065180614)
  const s = points(12.36067977499789, -38.042260651806146, 32.36067977499789, -23.511410091698934)
  const outer = polygon([...p, ...q, ...r, ...s])
  const arcs = [
    arc(p[1]!, p[2]!, { x: -159.20229797354168, y: -219.12316462824742 }, 1),
    arc(p[2]!, q[0]!, { x: -90.71337944531139, y: -103.82701484977335 }, 1),
  ]
  const segments = outer.segments.map((edge, i) => arcs[i - 1] ?? edge)
  const region = solid({ segments, closed: true })
  const neck = narrowestNeck(region)
  if (neck !== undefined) expect(cannotBeShortened(region, neck)).toBe(true)
})

test('of the necks that are taken by their direction the narrowest is given', () => {
  // a bar 100 × 20 with a horn 8 wide: the horn is cut across at 0, the bar at 90°, beside a bite that leaves 5
  const shape = solid(
    polygon(
      points(0, 0, 20, 0, 20, 15, 30, 15, 30, 0, 100, 0, 100, 20, 70, 20, 70, 50, 62, 50, 62, 20, 0, 20),
    ),
  )
  const level = (direction: number) => Math.abs(Math.sin(direction)) < 1 / 2
  expect(narrowestNeck(shape)!.width).toBeCloseTo(5, 9)
  expect(narrowestNeck(shape, level)!.width).toBeCloseTo(8, 9)
  expect(narrowestNeck(shape, () => false)).toBeUndefined()
})
