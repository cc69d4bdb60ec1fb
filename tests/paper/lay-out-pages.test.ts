import { expect, test } from 'vitest'
import type { Drawing } from '../../src/drawing/drawing.ts'
import { linesMark } from '../../src/drawing/make-mark.ts'
import { boundsOfMarks } from '../../src/drawing/mark-bounds.ts'
import type { Page } from '../../src/drawing/page.ts'
import { apply, identity } from '../../src/geometry/shape/matrix.ts'
import { frameOf } from '../../src/paper/frame.ts'
import { layOutPages } from '../../src/paper/lay-out-pages.ts'
import { lying, papers } from '../../src/paper/papers.ts'
import { plain } from '../../src/text/words.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { bundledFonts } from '../text/bundled-font.ts'

const fonts = bundledFonts()
const { body } = frameOf(papers.letter, defaultWorkshop)
const { body: lyingBody } = frameOf(lying(papers.letter), defaultWorkshop)
const free = { width: body.right - body.left, height: body.top - body.bottom }
const freeLying = { width: lyingBody.right - lyingBody.left, height: lyingBody.top - lyingBody.bottom }

/** A drawing of one line whose bounds are of this size, its lower left corner away from the origin. */
function drawing(id: string, width: number, height: number): Drawing {
  return {
    id,
    caption: { plan: 'Pier', sheet: 'template', part: id },
    marks: [
      linesMark({ layer: 'cut' }, 'cut', [
        [
          { x: -30, y: 50 },
          { x: -30 + width, y: 50 + height },
        ],
      ]),
    ],
    bounds: { left: -30, bottom: 50, right: -30 + width, top: 50 + height },
    keepWhole: [],
  }
}

function lay(...sheets: readonly (readonly Drawing[])[]) {
  const arranged = sheets.map(drawings => ({ id: drawings[0]!.id, drawings }))
  const { count, pages, misfits } = layOutPages(arranged, papers.letter, 'inch', defaultWorkshop, fonts)
  return { count, pages: [...pages], misfits }
}

const isUpright = ({ paper }: Page) => paper.width === 8.5 * 25.4 && paper.height === 11 * 25.4
const isLying = ({ paper }: Page) => paper.width === 11 * 25.4 && paper.height === 8.5 * 25.4

test('a sheet that fits as exactly as can be stands upright; a hair more and the paper lies', () => {
  expect(isUpright(lay([drawing('plank', free.width, 50)]).pages[0]!)).toBe(true)
  expect(isLying(lay([drawing('plank', free.width + 0.001, 50)]).pages[0]!)).toBe(true)
})

test('a sheet that fits neither way is left out, and what it wants and what there is are said in numbers', () => {
  const { count, pages, misfits } = lay(
    [drawing('plank', 300, 40)],
    [drawing('post', 50, 50)],
    [drawing('mast', 40, 300)],
  )
  expect([count, pages.length]).toEqual([1, 1])
  expect(misfits).toEqual([
    { id: 'plank', wanted: { width: 300, height: 40 }, available: freeLying },
    { id: 'mast', wanted: { width: 40, height: 300 }, available: free },
  ])
})

test('the first arrangement that fits is taken, upright before lying', () => {
  const arrangements = [drawing('wide', 300, 40), drawing('high', 40, free.height), drawing('small', 40, 40)]
  expect(lay(arrangements).pages[0]!.placed[0]!.drawing.id).toBe('high')
})

test('of a sheet that fits in no arrangement the one that comes nearest is named', () => {
  const { misfits } = lay([drawing('plank', 300, 300), drawing('plank', 400, 40)])
  expect(misfits[0]!.wanted).toEqual({ width: 400, height: 40 })
})

test('a drawing is put true to size into the upper left of the free space', () => {
  const { drawing: placed, matrix } = lay([drawing('plank', 100, 40)]).pages[0]!.placed[0]!
  expect({ ...matrix, e: 0, f: 0 }).toEqual(identity)
  const corner = apply(matrix, { x: placed.bounds.left, y: placed.bounds.top })
  expect(corner.x).toBeCloseTo(body.left, 9)
  expect(corner.y).toBeCloseTo(body.top, 9)
})

test('pages are in the order of the sheets, counted from 1, and each says which of how many it is', () => {
  const { pages } = lay([drawing('a', 10, 10)], [drawing('b', 10, 10)], [drawing('c', 10, 10)])
  expect(pages.map(p => [p.number, p.placed[0]!.drawing.id])).toEqual([
    [1, 'a'],
    [2, 'b'],
    [3, 'c'],
  ])
  const words = pages[1]!.furniture.flatMap(m => (m.kind === 'text' ? [plain(m.words)] : []))
  expect(words).toContain('page 2 of 3')
})

test('pages are made when they are asked for, as often as they are', () => {
  const { pages } = layOutPages(
    [{ id: 'a', drawings: [drawing('a', 10, 10)] }],
    papers.a4,
    'mm',
    defaultWorkshop,
    fonts,
  )
  expect([...pages]).toEqual([...pages])
})

test.each(Object.values(papers))('on $name nothing that is printed reaches into the margins', paper => {
  const { margin } = defaultWorkshop.printer
  const pages = [paper, lying(paper)].flatMap(sheet => {
    const { body } = frameOf(sheet, defaultWorkshop)
    const whole = drawing('whole', body.right - body.left, body.top - body.bottom)
    return [...layOutPages([{ id: 'whole', drawings: [whole] }], paper, 'mm', defaultWorkshop, fonts).pages]
  })
  expect(pages).toHaveLength(2)
  for (const { paper, furniture } of pages) {
    const box = boundsOfMarks(fonts, furniture)
    expect(box.left).toBeGreaterThanOrEqual(margin.left)
    expect(box.bottom).toBeGreaterThanOrEqual(margin.bottom)
    expect(box.right).toBeLessThanOrEqual(paper.width - margin.right)
    expect(box.top).toBeLessThanOrEqual(paper.height - margin.top)
  }
})
