import { beforeAll, expect, test } from 'vitest'
import { leftOf, pointAt, tangentAt } from '../../../src/geometry/measure/along.ts'
import { boundsOfRegions } from '../../../src/geometry/measure/bounds.ts'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { nearestOnRegion, nearestOnSegment } from '../../../src/geometry/measure/nearest.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { randomFrom } from '../generate/random.ts'
import { type Clipper, loadClipper } from './clipper.ts'
import { contoursOf, operations, perimeter, totalArea } from './laws.ts'
import { randomCase } from './random-cases.ts'

/** How finely arcs are chorded for the other library, in mm; it rounds to 1e-6 mm besides. */
const deviation = 1e-3

let clipper: Clipper
beforeAll(async () => {
  clipper = await loadClipper()
})

const codes = {
  union: 'Union',
  intersection: 'Intersection',
  difference: 'Difference',
  exclusiveOr: 'Xor',
} as const

function theirs(name: keyof typeof codes, first: readonly Region[], second: readonly Region[]): Point[][] {
  const { module } = clipper
  const a = clipper.paths(first, deviation)
  const b = clipper.paths(second, deviation)
  const made = module.BooleanOpD(module.ClipType[codes[name]], module.FillRule.Positive, a, b, 6)
  const points = clipper.points(made)
  for (const paths of [a, b, made]) paths.delete()
  return points
}

function area(points: readonly Point[]): number {
  return points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!
    return sum + (p.x * q.y - q.x * p.y) / 2
  }, 0)
}

type Drawn = { readonly contours: readonly Contour[]; readonly holds: (p: Point) => boolean }

/** How far the two outlines may be apart, in mm: several times the chording. */
const reach = 10 * deviation

/**
 * Whether the outline of one drawing lies within `reach` of the other's, where the drawing is wide enough for that
 * to mean anything (a spike narrower than the chording may end elsewhere): of two points `reach` to the left and
 * right of an edge, one inside and one outside, each has to be so in the other drawing as well.
 */
function strays(one: Drawn, other: Drawn, random: () => number): Point | undefined {
  const edges = one.contours.flatMap(c => c.segments)
  for (let k = 0; k < Math.min(60, edges.length); k++) {
    const edge = edges[Math.floor(random() * edges.length)]!
    const share = 0.05 + 0.9 * random()
    const p = pointAt(edge, share)
    const aside = leftOf(tangentAt(edge, share))
    const beside = [reach, -reach].map(d => ({ x: p.x + d * aside.x, y: p.y + d * aside.y }))
    const inside = beside.map(one.holds)
    const near = (q: Point) =>
      one.contours.some(c => c.segments.some(s => nearestOnSegment(s, q).distance < reach / 2))
    if (inside[0] === inside[1] || beside.some(near)) continue
    if (beside.some((q, i) => other.holds(q) !== inside[i])) return p
  }
  return undefined
}

/** Whether contours touch each other: the other library draws such a pair as one contour or as two. */
function touching(regions: readonly Region[]): boolean {
  const seen = new Set<Point>()
  for (const s of contoursOf(regions).flatMap(c => c.segments)) {
    if (seen.has(s.from)) return true
    seen.add(s.from)
  }
  return false
}

/** Pairs in general position: where edges nearly coincide, chords decide by chance. */
function plainCases(count: number, seed: number) {
  const cases: { number: number; first: readonly Region[]; second: readonly Region[] }[] = []
  for (let number = seed; cases.length < count; number++) {
    const made = randomCase(number)
    if (made.kind.includes('anywhere')) cases.push({ number, first: made.first, second: made.second })
  }
  return cases
}

test('a chorded copy through another library has the same area, members and outline', () => {
  const seed = Date.now() % 1_000_000_000
  console.log(`beside clipper2, seed ${seed}`)
  for (const { number, first, second } of plainCases(40, seed)) {
    const all = [...first, ...second]
    const { left, bottom, right, top } = boundsOfRegions(all)
    for (const name of Object.keys(operations) as (keyof typeof operations)[]) {
      const label = `${name} of case ${number}`
      const outcome = operations[name].run(first, second)
      if (!outcome.ok) throw new Error(`${label}: ${outcome.fault.reason}`)
      const ours = outcome.value
      const other = theirs(name, first, second)
      const slack = 2 * deviation * perimeter(all)
      expect(Math.abs(totalArea(ours) - other.reduce((s, p) => s + area(p), 0)), label).toBeLessThan(slack)

      const random = randomFrom(number)
      const polygons = other.filter(p => p.length > 1).map(p => ({ outer: polygon(p), holes: [] }))
      for (let k = 0; k < 20; k++) {
        const p = { x: left + random() * (right - left), y: bottom + random() * (top - bottom) }
        if (all.some(r => nearestOnRegion(r, p)!.distance < 4 * deviation)) continue
        const inOurs = ours.some(r => pointInRegion(r, p) === 'inside')
        const inTheirs = polygons.filter(r => pointInRegion(r, p) === 'inside').length % 2 === 1
        expect(inTheirs, `${label} at (${p.x}, ${p.y})`).toBe(inOurs)
      }

      // both ways, so it is the Hausdorff distance that is bounded
      const mine: Drawn = {
        contours: contoursOf(ours),
        holds: p => ours.some(r => pointInRegion(r, p) === 'inside'),
      }
      const chorded: Drawn = {
        contours: contoursOf(polygons),
        holds: p => polygons.filter(r => pointInRegion(r, p) === 'inside').length % 2 === 1,
      }
      expect(strays(mine, chorded, random), `${label}: our outline`).toBeUndefined()
      expect(strays(chorded, mine, random), `${label}: their outline`).toBeUndefined()
    }
  }
})

test('triangles on a grid come out of the other library with as many contours and holes', () => {
  // no arcs and whole coordinates: nothing is left to chance
  const random = randomFrom(7)
  const whole = (most: number) => Math.floor(random() * most)
  const triangle = () => {
    const [x, y] = [whole(20), whole(20)]
    return polygon([
      { x, y },
      { x: x + 3 + whole(9), y: y + whole(2) },
      { x: x + 4 + whole(6), y: y + 3 + whole(7) },
    ])
  }
  const solids = (count: number) => Array.from({ length: count }, () => ({ outer: triangle(), holes: [] }))
  let compared = 0
  for (let k = 0; k < 200; k++) {
    const [first, second] = [solids(4), solids(3)]
    for (const name of ['union', 'intersection', 'difference'] as const) {
      const outcome = operations[name].run(first, second)
      if (!outcome.ok) throw new Error(outcome.fault.reason)
      if (touching(outcome.value)) continue
      const other = theirs(name, first, second).filter(p => Math.abs(area(p)) > 1e-5)
      const count = [outcome.value.length, outcome.value.flatMap(r => r.holes).length]
      expect([other.filter(p => area(p) > 0).length, other.filter(p => area(p) < 0).length]).toEqual(count)
      compared++
    }
  }
  expect(compared).toBeGreaterThan(400)
})
