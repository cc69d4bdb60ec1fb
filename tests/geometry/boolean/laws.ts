/** What every result of a boolean has to satisfy, measured without the engine that made it. */
import { difference, exclusiveOr, intersection, union } from '../../../src/geometry/boolean/boolean.ts'
import { pointAt } from '../../../src/geometry/measure/along.ts'
import { regionArea, signedArea } from '../../../src/geometry/measure/area.ts'
import { boundsOfRegions } from '../../../src/geometry/measure/bounds.ts'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { contourLength } from '../../../src/geometry/measure/length.ts'
import { nearestOnRegion } from '../../../src/geometry/measure/nearest.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Outcome } from '../../../src/geometry/shape/outcome.ts'
import { distance, type Point } from '../../../src/geometry/shape/point.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import { randomFrom } from '../generate/random.ts'

type Regions = readonly Region[]

export const operations = {
  union: { run: (a: Regions, b: Regions) => union(a, b), holds: (a: boolean, b: boolean) => a || b },
  intersection: { run: intersection, holds: (a: boolean, b: boolean) => a && b },
  difference: { run: difference, holds: (a: boolean, b: boolean) => a && !b },
  exclusiveOr: { run: exclusiveOr, holds: (a: boolean, b: boolean) => a !== b },
} as const

export function totalArea(regions: Regions): number {
  return regions.reduce((sum, r) => sum + regionArea(r), 0)
}

export function contoursOf(regions: Regions): Contour[] {
  return regions.flatMap(r => [r.outer, ...r.holes])
}

export function perimeter(regions: Regions): number {
  return contoursOf(regions).reduce((sum, c) => sum + contourLength(c), 0)
}

/**
 * The ways in which the four booleans of two lists of regions break the laws; none when all is well. Vertices
 * are snapped by up to `coincident`, so areas may be out by as much along every edge, and points nearer to an
 * edge than a few times that are not asked about.
 */
export function brokenLaws(first: Regions, second: Regions, seed: number): string[] {
  const broken: string[] = []
  const made: Record<string, Regions> = {}
  for (const [name, { run }] of Object.entries(operations)) {
    const outcome: Outcome<Regions> = run(first, second)
    if (!outcome.ok) return [`${name}: fault: ${outcome.fault.reason}`]
    made[name] = outcome.value
    broken.push(...malformed(outcome.value).map(m => `${name}: ${m}`))
  }
  const alone = union(first)
  const other = union(second)
  const away = difference(second, first)
  if (!alone.ok || !other.ok || !away.ok) return ['union of one list: fault']
  const a = totalArea(alone.value)
  const b = totalArea(other.value)
  const [u, i, d, x] = ['union', 'intersection', 'difference', 'exclusiveOr'].map(n =>
    totalArea(made[n]!),
  ) as [number, number, number, number]
  const e = totalArea(away.value)
  const slack = 2 * coincident * (perimeter(first) + perimeter(second)) + 1e-10 * (a + b)
  const law = (name: string, left: number, right: number): void => {
    if (!(Math.abs(left - right) <= slack)) broken.push(`${name}: ${left} against ${right}, ${slack} allowed`)
  }
  law('A∪B = A + B − A∩B', u, a + b - i)
  law('A−B = A − A∩B', d, a - i)
  law('B−A = B − A∩B', e, b - i)
  law('A xor B = A∪B − A∩B', x, u - i)
  const again = union(made.difference!, made.intersection!)
  const none = intersection(made.difference!, made.intersection!)
  if (!again.ok || !none.ok) return [...broken, 'the pieces put together: fault']
  law('(A−B) ∪ (A∩B) = A', totalArea(again.value), a)
  law('(A−B) ∩ (A∩B) is empty', totalArea(none.value), 0)
  broken.push(...malformed(again.value).map(m => `the pieces put together: ${m}`))
  broken.push(...wrongPoints(first, second, made, seed))
  return broken
}

function malformed(regions: Regions): string[] {
  const wrong: string[] = []
  for (const { outer, holes } of regions) {
    if (!(signedArea(outer) > 0)) wrong.push('an outer contour does not run counter-clockwise')
    for (const hole of holes) if (!(signedArea(hole) < 0)) wrong.push('a hole does not run clockwise')
  }
  for (const { segments } of contoursOf(regions)) {
    const starts = new Set<Point>()
    segments.forEach((s, k) => {
      if (segments[(k + 1) % segments.length]!.from !== s.to) wrong.push('neighbours do not share a point')
      if (starts.has(s.from)) wrong.push('a contour comes back to a vertex')
      starts.add(s.from)
      if (s.kind === 'arc') {
        for (const p of [s.from, s.to]) {
          const off = Math.abs(distance(p, s.centre) - s.radius)
          if (off > 2 * coincident) wrong.push(`the end of an arc is ${off} off its circle`)
        }
      }
    })
  }
  return wrong
}

/** Points this near to an edge of the input may be counted to either side. */
const doubtful = 5 * coincident

function wrongPoints(first: Regions, second: Regions, made: Record<string, Regions>, seed: number): string[] {
  const random = randomFrom(seed ^ 0x5bd1e995)
  const all = [...first, ...second]
  const { left, bottom, right, top } = boundsOfRegions(all)
  const edges = contoursOf([...all, ...Object.values(made).flat()]).flatMap(c => c.segments)
  const points: Point[] = []
  for (let k = 0; k < 8; k++) {
    points.push({ x: left + random() * (right - left), y: bottom + random() * (top - bottom) })
  }
  for (let k = 0; k < 16; k++) {
    const p = pointAt(edges[Math.floor(random() * edges.length)]!, random() < 0.3 ? 0 : random())
    const away = 10 ** (-4.5 + 4.5 * random())
    const angle = 2 * Math.PI * random()
    points.push({ x: p.x + away * Math.cos(angle), y: p.y + away * Math.sin(angle) })
  }
  const within = (list: Regions, p: Point) => list.some(r => pointInRegion(r, p) === 'inside')
  const wrong: string[] = []
  for (const p of points) {
    if (all.some(r => nearestOnRegion(r, p)!.distance <= doubtful)) continue
    const a = within(first, p)
    const b = within(second, p)
    for (const [name, { holds }] of Object.entries(operations)) {
      if (within(made[name]!, p) !== holds(a, b)) wrong.push(`${name}: (${p.x}, ${p.y}) is on the wrong side`)
    }
  }
  return wrong
}
