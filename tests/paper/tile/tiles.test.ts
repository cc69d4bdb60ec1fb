import fc from 'fast-check'
import { expect, test } from 'vitest'
import { textMark } from '../../../src/drawing/make-mark.ts'
import type { Mark } from '../../../src/drawing/mark.ts'
import { textBox } from '../../../src/drawing/text-box.ts'
import { pointAt } from '../../../src/geometry/measure/along.ts'
import { regionArea } from '../../../src/geometry/measure/area.ts'
import { nearestOnContour } from '../../../src/geometry/measure/nearest.ts'
import type { Bounds, Contour } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import { tiled } from '../../../src/paper/tile/tile-sheet.ts'
import { plain } from '../../../src/text/words.ts'
import { fonts, partDrawing, randomPart } from './large-drawing.ts'

const rooms = [
  { width: 189, height: 216 },
  { width: 253, height: 152 },
]
const overlap = 10

const contoursOf = (marks: readonly Mark[], like: Mark): readonly Contour[] =>
  marks.flatMap(m =>
    m.kind === 'path' &&
    like.kind === 'path' &&
    m.role === like.role &&
    m.layer === like.layer &&
    m.subject === like.subject
      ? m.contours
      : [],
  )

const inside = ({ left, right, bottom, top }: Bounds, { x, y }: Point, by: number): boolean =>
  x > left + by && x < right - by && y > bottom + by && y < top - by

const farFrom = (contours: readonly Contour[], p: Point): number =>
  Math.min(Infinity, ...contours.map(c => nearestOnContour(c, p)?.distance ?? Infinity))

const shares = [0, 0.1, 0.37, 0.5, 0.82, 1]

test('every point of every line is on at least one tile, on every tile that shows its place, and nowhere else', () => {
  fc.assert(
    fc.property(randomPart, drawing => {
      const { tiling, tiles } = tiled(drawing, rooms, overlap, fonts)
      for (const mark of drawing.marks) {
        if (mark.kind !== 'path') continue
        const original = contoursOf(drawing.marks, mark)
        const cut = tiles.map(({ marks }) => contoursOf(marks, mark))
        for (const s of original.flatMap(c => c.segments)) {
          for (const p of shares.map(share => pointAt(s, share))) {
            const showing = tiling.tiles.flatMap(({ window }, i) =>
              inside(window, p, coincident) ? [i] : [],
            )
            const onRim = tiling.tiles.some(({ window }) => inside(window, p, -coincident))
            expect(onRim).toBe(true)
            for (const i of showing) expect(farFrom(cut[i]!, p)).toBeLessThan(2 * coincident)
          }
        }
        for (const [i, contours] of cut.entries()) {
          for (const s of contours.flatMap(c => c.segments)) {
            for (const p of shares.map(share => pointAt(s, share))) {
              expect(farFrom(original, p)).toBeLessThan(2 * coincident)
              expect(inside(tiling.tiles[i]!.window, p, -2 * coincident)).toBe(true)
            }
          }
        }
      }
    }),
    { numRuns: 30 },
  )
})

test('fills are cut into parts that together have the whole area, what two tiles share counted once', () => {
  const black = { left: 0, bottom: 0, right: 480, top: 380 }
  const drawing = partDrawing(
    { width: 500, height: 400, radius: 0 },
    [],
    [{ layer: 'text', kind: 'fill', regions: [rectangle(black)] }],
  )
  const { tiling, tiles } = tiled(drawing, rooms, overlap, fonts)
  const areas = tiles.map(({ marks }) =>
    marks.flatMap(m => (m.kind === 'fill' ? m.regions : [])).reduce((sum, r) => sum + regionArea(r), 0),
  )
  tiling.tiles.forEach(({ window }, i) => {
    expect(areas[i]).toBeCloseTo(sharedArea(window, black), 6)
  })
  const cells = tiling.tiles.reduce((sum, { cell }) => sum + sharedArea(cell, black), 0)
  expect(cells).toBeCloseTo(480 * 380, 6)
})

function sharedArea(a: Bounds, b: Bounds): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left)
  const height = Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom)
  return Math.max(0, width) * Math.max(0, height)
}

test('all lettering is whole on at least one tile, and none is cut', () => {
  fc.assert(
    fc.property(randomPart, drawing => {
      const { tiling, tiles } = tiled(drawing, rooms, overlap, fonts)
      const said = new Set(
        tiles.flatMap(({ marks }) => marks.flatMap(m => (m.kind === 'text' ? [plain(m.words)] : []))),
      )
      for (const mark of drawing.marks) if (mark.kind === 'text') expect(said).toContain(plain(mark.words))
      tiles.forEach(({ marks }, i) => {
        for (const mark of marks) {
          if (mark.kind !== 'text') continue
          const { window } = tiling.tiles[i]!
          const box = textBox(fonts, mark)
          expect(box.left).toBeGreaterThanOrEqual(window.left - coincident)
          expect(box.right).toBeLessThanOrEqual(window.right + coincident)
        }
      })
    }),
    { numRuns: 40 },
  )
})

test('lettering that two tiles would cut is moved off the seam, and not onto other lettering', () => {
  // one below the other like the steps of a stair, so that every seam between full pages runs through one
  const said = Array.from({ length: 8 }, (_, i) =>
    textMark(
      { layer: 'text' },
      [`over the face side, this side to the fence ${i}`],
      { x: 8 + 30 * i, y: 4 + 6 * i },
      2.5,
    ),
  )
  const drawing = partDrawing({ width: 300, height: 60, radius: 0 }, [], said)
  const { tiling, tiles, crossed } = tiled(drawing, rooms, overlap, fonts)
  expect(tiling.seams).toHaveLength(1)
  expect(crossed.filter(({ kind }) => kind === 'label')).toEqual([])
  const printed = tiles.flatMap(({ marks }) =>
    marks.flatMap(m => (m.kind === 'text' && plain(m.words).startsWith('over') ? [m] : [])),
  )
  const before = said.flatMap(m => (m.kind === 'text' ? [m.at.x] : []))
  expect(printed.filter(({ at }) => !before.includes(at.x)).length).toBeGreaterThan(0)
  const boxes = tiles.map(({ marks }) => marks.flatMap(m => (m.kind === 'text' ? [textBox(fonts, m)] : [])))
  for (const onTile of boxes) {
    onTile.forEach((a, i) => {
      for (const b of onTile.slice(i + 1)) expect(sharedArea(a, b)).toBe(0)
    })
  }
})

test('no tile is larger than the page, and neighbours share the whole overlap', () => {
  fc.assert(
    fc.property(randomPart, drawing => {
      const { tiling } = tiled(drawing, rooms, overlap, fonts)
      const room = rooms[tiling.room]!
      const [width, height] = tiling.turned ? [room.height, room.width] : [room.width, room.height]
      for (const { window } of tiling.tiles) {
        expect(window.right - window.left).toBeLessThanOrEqual(width + coincident)
        expect(window.top - window.bottom).toBeLessThanOrEqual(height + coincident)
      }
      for (const { before, after, from, to } of tiling.seams) {
        const [a, b] = [tiling.tiles[before]!.window, tiling.tiles[after]!.window]
        const upright = from.x === to.x
        const shared = upright
          ? Math.min(a.right, b.right) - Math.max(a.left, b.left)
          : Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom)
        expect(shared).toBeCloseTo(overlap, 6)
      }
    }),
    { numRuns: 40 },
  )
})

/** Full pages with overlap, the better of the ways that rectangle and paper can lie; arithmetic alone. */
function pagesOfRectangle(width: number, height: number): number {
  const count = (length: number, reach: number): number =>
    length <= reach ? 1 : Math.ceil((length - overlap) / (reach - overlap) - 1e-9)
  return Math.min(
    ...rooms.flatMap(room => [
      count(width, room.width) * count(height, room.height),
      count(width, room.height) * count(height, room.width),
    ]),
  )
}

test('a rectangle full of lines takes no more pages than full pages laid edge to edge both ways', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 300, max: 900, noNaN: true }),
      fc.double({ min: 300, max: 900, noNaN: true }),
      (width, height) => {
        const { tiling } = tiled(partDrawing({ width, height, radius: 0 }, []), rooms, overlap, fonts)
        // the outline has a line's width, and a hollow one may leave tiles blank
        expect(tiling.tiles.length).toBeLessThanOrEqual(pagesOfRectangle(width + 1, height + 1))
      },
    ),
    { numRuns: 40 },
  )
})

test('the blank corner of a slanting or stepped part is not printed', () => {
  const stepped = partDrawing(
    [
      { x: 0, y: 0 },
      { x: 520, y: 0 },
      { x: 520, y: 120 },
      { x: 120, y: 120 },
      { x: 120, y: 520 },
      { x: 0, y: 520 },
    ],
    [],
  )
  expect(pagesOfRectangle(520, 520)).toBe(9)
  expect(tiled(stepped, rooms, overlap, fonts).tiles.length).toBeLessThanOrEqual(5)
})

test('a blank tile is printed where what lies loose beyond it could not be laid in its place otherwise', () => {
  const ring = partDrawing({ width: 1100, height: 1100, radius: 29 }, [{ x: 550, y: 550, radius: 6 }])
  const { tiling, tiles } = tiled(ring, rooms, overlap, fonts)
  const reached = new Set([0])
  for (let grew = true; grew; ) {
    grew = false
    for (const { before, after } of tiling.seams) {
      if (reached.has(before) === reached.has(after)) continue
      reached.add(before).add(after)
      grew = true
    }
  }
  expect(reached.size).toBe(tiles.length)
  expect(tiles.length).toBeLessThan(pagesOfRectangle(1100, 1100))
})
