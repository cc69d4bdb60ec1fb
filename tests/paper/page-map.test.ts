import { expect, test } from 'vitest'
import { lettering } from '../../src/drawing/lettering.ts'
import type { Mark } from '../../src/drawing/mark.ts'
import { contourBounds } from '../../src/geometry/measure/bounds.ts'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import { rectangle } from '../../src/geometry/shape/rectangle.ts'
import { line } from '../../src/geometry/shape/segment.ts'
import { mapWidth, type PageMap, pageMapMarks } from '../../src/paper/page-map.ts'
import { plain } from '../../src/text/words.ts'
import { apart, inkBox } from '../drawing/ink-box.ts'
import { bundledFonts } from '../text/bundled-font.ts'

const fonts = bundledFonts()
const height = 17

/** A drawing on so many columns and rows of pages, each of this size. */
function mapOf(columns: number, rows: number, width: number, height: number): PageMap {
  const cells = Array.from({ length: columns * rows }, (_, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)]
    const box = {
      left: column * width,
      right: (column + 1) * width,
      bottom: (rows - row - 1) * height,
      top: (rows - row) * height,
    }
    return { box, page: 98 + i }
  })
  const all = { left: 0, right: columns * width, bottom: 0, top: rows * height }
  return { outline: [rectangle(all).outer], cells }
}

function drawn(map: PageMap): { readonly into: Bounds; readonly marks: readonly Mark[] } {
  const into = { left: 50, right: 50 + mapWidth(map, height), bottom: 20, top: 20 + height }
  return { into, marks: pageMapMarks(map, into, 99) }
}

const texts = (marks: readonly Mark[]) => marks.flatMap(m => (m.kind === 'text' ? [m] : []))

test.each([
  ['a long narrow drawing', mapOf(1, 2, 60, 190)],
  ['a narrow one of three pages', mapOf(1, 3, 40, 200)],
  ['one of pages that are nearly square', mapOf(1, 2, 150, 190)],
  ['one of two pages side by side', mapOf(2, 1, 180, 240)],
  ['a large one', mapOf(3, 2, 180, 240)],
])('the numbers of the pages of %s can be read, and stand clear of each other within the map', (_, map) => {
  const { into, marks } = drawn(map)
  const numbers = texts(marks)
  expect(numbers.map(({ words }) => plain(words))).toEqual(map.cells.map(({ page }) => `${page}`))
  const boxes = numbers.map(text => inkBox(fonts, text))
  numbers.forEach((text, i) => {
    expect(text.height).toBeGreaterThanOrEqual(lettering.small)
    expect(boxes[i]!.left).toBeGreaterThanOrEqual(into.left)
    expect(boxes[i]!.right).toBeLessThanOrEqual(into.right)
    for (const other of boxes.slice(i + 1)) expect(apart(boxes[i]!, other, 0.3)).toBe(true)
  })
})

test('where pages are too narrow for their numbers these stand left of them, clear of all lines', () => {
  const { marks } = drawn(mapOf(1, 2, 60, 190))
  const lines = marks.flatMap(m =>
    m.kind === 'path' ? m.contours.flatMap(c => c.segments.flatMap(({ from, to }) => [from.x, to.x])) : [],
  )
  for (const text of texts(marks)) expect(inkBox(fonts, text).right).toBeLessThan(Math.min(...lines) - 0.5)
})

test('a line of the drawing leaves the numbers of the pages that it runs through clear, and is drawn besides', () => {
  const map = mapOf(2, 1, 180, 240)
  const across = { segments: [line({ x: 10, y: 121 }, { x: 350, y: 121 })], closed: false }
  const { marks } = drawn({ ...map, outline: [across] })
  const pieces = marks.flatMap(m => (m.kind === 'path' ? m.contours.filter(c => !c.closed) : []))
  const boxes = texts(marks).map(text => inkBox(fonts, text))
  const bounds = pieces.map(contourBounds)
  for (const box of boxes) for (const piece of bounds) expect(apart(box, piece, 0.1)).toBe(true)
  // from one page to the other it goes on between the numbers
  expect(bounds.some(b => b.left > boxes[0]!.right && b.right < boxes[1]!.left)).toBe(true)
  const drawnLength = bounds.reduce((sum, b) => sum + b.right - b.left, 0)
  const ends = Math.max(...bounds.map(b => b.right)) - Math.min(...bounds.map(b => b.left))
  expect(drawnLength).toBeGreaterThan(ends / 3)
})
