import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import type { Page } from '../../../src/drawing/page.ts'
import { contourBounds } from '../../../src/geometry/measure/bounds.ts'
import { apply } from '../../../src/geometry/shape/matrix.ts'
import { distance, type Point } from '../../../src/geometry/shape/point.ts'
import { layOutPages } from '../../../src/paper/lay-out-pages.ts'
import { papers } from '../../../src/paper/papers.ts'
import { plain } from '../../../src/text/words.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { fonts, partDrawing, randomPart } from './large-drawing.ts'

function pagesOf(drawing: Drawing): readonly Page[] {
  const sheet = { id: drawing.id, group: drawing.id, drawings: [drawing] as const }
  const { pages } = layOutPages([sheet], { paper: papers.a4, units: 'mm', workshop: defaultWorkshop }, fonts)
  return [...pages()]
}

/** What a maker sees of a page: the match marks by their letters, and the middles of holes, in the page's millimetres. */
function seenOn({ placed }: Page): { marks: Map<string, Point>; holes: Map<string, Point> } {
  const marks = new Map<string, Point>()
  const holes = new Map<string, Point>()
  for (const { drawing, matrix } of placed) {
    const diamonds = drawing.marks.flatMap(m =>
      m.kind === 'path' && m.subject === 'seam'
        ? m.contours.flatMap(c => (c.closed ? [apply(matrix, middleOf(contourBounds(c)))] : []))
        : [],
    )
    for (const m of drawing.marks) {
      if (m.kind === 'text' && m.subject === 'seam') {
        const at = apply(matrix, m.at)
        const nearest = diamonds.reduce((a, b) => (distance(b, at) < distance(a, at) ? b : a), diamonds[0]!)
        if (nearest !== undefined && distance(nearest, at) < 9) marks.set(plain(m.words), nearest)
      }
      if (m.kind === 'path' && m.role === 'drill' && m.contours[0]!.closed) {
        holes.set(m.subject!, apply(matrix, middleOf(contourBounds(m.contours[0]!))))
      }
    }
  }
  return { marks, holes }
}

function middleOf({
  left,
  right,
  bottom,
  top,
}: {
  left: number
  right: number
  bottom: number
  top: number
}): Point {
  return { x: (left + right) / 2, y: (bottom + top) / 2 }
}

/** Lays each page on one that lies already so that a pair of marks with the same letter meets; as a maker does. */
function joined(pages: readonly Page[]): Map<string, Point> {
  const seen = pages.map(seenOn)
  const shifts = new Map<number, Point>([[0, { x: 0, y: 0 }]])
  for (let grew = true; grew; ) {
    grew = false
    seen.forEach(({ marks }, i) => {
      if (shifts.has(i)) return
      for (const [j, shift] of shifts) {
        const letter = [...marks.keys()].find(l => seen[j]!.marks.has(l))
        if (letter === undefined) continue
        const there = seen[j]!.marks.get(letter)!
        const here = marks.get(letter)!
        shifts.set(i, { x: shift.x + there.x - here.x, y: shift.y + there.y - here.y })
        grew = true
        return
      }
    })
  }
  expect(shifts.size).toBe(pages.length)
  return new Map(
    seen.flatMap(({ holes }, i) =>
      [...holes].map(([name, p]): [string, Point] => [
        name,
        { x: p.x + shifts.get(i)!.x, y: p.y + shifts.get(i)!.y },
      ]),
    ),
  )
}

test('pages joined at their match marks put the farthest holes apart as far as the drawing does', () => {
  fc.assert(
    fc.property(randomPart, part => {
      const { right, top } = part.bounds
      const corners = [
        { x: 4, y: 4, radius: 2 },
        { x: right - 4, y: 4, radius: 2 },
        { x: 4, y: top - 4, radius: 2 },
        { x: right - 4, y: top - 4, radius: 2 },
      ]
      const drawing = partDrawing({ width: right, height: top, radius: 0 }, corners)
      const pages = pagesOf(drawing)
      fc.pre(pages.length > 1)
      const holes = joined(pages)
      expect(holes.size).toBe(4)
      for (const [i, a] of corners.entries()) {
        for (const [j, b] of corners.entries())
          expect(distance(holes.get(`hole-${i}`)!, holes.get(`hole-${j}`)!)).toBeCloseTo(distance(a, b), 6)
      }
    }),
    { numRuns: 40 },
  )
})

test('no letter comes twice, and marks on a page are farther apart than a page can slip', () => {
  for (const page of pagesOf(partDrawing({ width: 700, height: 600, radius: 12 }, []))) {
    const marks = [...seenOn(page).marks.values()]
    expect(marks.length).toBeGreaterThan(1)
    marks.forEach((a, i) => {
      for (const b of marks.slice(i + 1)) expect(distance(a, b)).toBeGreaterThan(8)
    })
  }
})

test('every tile says where it lies: the map with its own number, and which page goes on which', () => {
  const pages = pagesOf(partDrawing({ width: 380, height: 300, radius: 12 }, []))
  for (const { number, furniture } of pages) {
    const map = furniture.flatMap(m => (m.kind === 'text' && m.subject === 'page-map' ? [m] : []))
    expect(map.map(m => plain(m.words)).sort()).toEqual(pages.map(p => `${p.number}`).sort())
    expect(map.filter(m => m.weight === 'bold').map(m => plain(m.words))).toEqual([`${number}`])
    const words = furniture.flatMap(m => (m.kind === 'text' ? [plain(m.words)] : []))
    expect(words.some(w => /^(Fold at|Lies under)/.test(w))).toBe(true)
  }
})
