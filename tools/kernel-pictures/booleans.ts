import { difference, exclusiveOr, intersection, union } from '../../src/geometry/boolean/boolean.ts'
import { pointAt } from '../../src/geometry/measure/along.ts'
import { pointInRegion } from '../../src/geometry/measure/inside.ts'
import { nearestOnRegion } from '../../src/geometry/measure/nearest.ts'
import type { Region } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import type { Segment } from '../../src/geometry/shape/segment.ts'
import { coincident } from '../../src/number/tolerance.ts'
import { picture } from './picture.ts'
import { bar, given, moved, plate } from './shapes.ts'

const segmentsOf = (regions: readonly Region[]): Segment[] =>
  regions.flatMap(r => [r.outer, ...r.holes].flatMap(c => c.segments))

/** A place in every face of the picture, outside included. */
const faces = [
  [8, 38],
  [15, 27],
  [28, 14],
  [46, 30],
  [52, 6],
  [15, -3.6],
  [39, 19],
  [64, 20],
] as const

/** Both outlines, cut where they meet, and how often each region goes round every face. */
export function drawClassification(): string {
  const page = picture()
  const [a, b] = [plate(), bar()]
  page.wood(given(union([a], [b])))
  page.contour(a.outer, 'thin')
  for (const hole of a.holes) page.contour(hole, 'thin')
  page.contour(b.outer, 'dashed')
  for (const p of crossings(a, b)) page.dot(p)
  for (const [x, y] of faces) {
    const p = { x, y }
    const sides = [a, b].map(r => (pointInRegion(r, p) === 'inside' ? 1 : 0))
    page.words(p, sides.join(' '), 3)
  }
  return page.finish('Two regions cut into pieces, every face with its two winding numbers', 150)
}

/** The points of the result that lie on both outlines: where one was cut by the other. */
function crossings(a: Region, b: Region): readonly Point[] {
  const on = (r: Region, p: Point) => nearestOnRegion(r, p)!.distance <= coincident
  const ends = segmentsOf(given(exclusiveOr([a], [b]))).map(s => s.from)
  return [...new Set(ends)].filter(p => on(a, p) && on(b, p))
}

/** The pieces of both outlines that the union keeps, thick, and those that have the union on both sides. */
export function drawPieces(): string {
  const page = picture()
  const [a, b] = [plate(), bar()]
  const kept = given(union([a], [b]))
  page.wood(kept)
  const isKept = (s: Segment) => nearestOnRegion(kept[0]!, pointAt(s, 0.5))!.distance <= coincident
  const pieces = segmentsOf(given(exclusiveOr([a], [b])))
  page.segments(
    pieces.filter(s => !isKept(s)),
    'dotted',
  )
  page.segments(pieces.filter(isKept), 'thick')
  for (const p of crossings(a, b)) page.dot(p)
  return page.finish('The pieces that have the result on one side only are its boundary', 150)
}

/** The four operations on the same two regions. */
export function drawOperations(): string {
  const page = picture()
  const [a, b] = [plate(), bar()]
  const results = [
    ['union', given(union([a], [b]))],
    ['difference', given(difference([a], [b]))],
    ['intersection', given(intersection([a], [b]))],
    ['exclusive or', given(exclusiveOr([a], [b]))],
  ] as const
  results.forEach(([name, regions], i) => {
    const x = (i % 2) * 82
    const y = i < 2 ? 0 : -72
    const shown = regions.map(r => moved(r, x, y))
    page.wood(shown)
    page.contour(moved(a, x, y).outer, 'fine')
    page.contour(moved(b, x, y).outer, 'fine')
    for (const r of shown) for (const c of [r.outer, ...r.holes]) page.contour(c, 'thick')
    page.words({ x: x + 31, y: y - 15 }, name, 4)
  })
  return page.finish('Union, difference, intersection and exclusive or', 180)
}
