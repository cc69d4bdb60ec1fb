import { expect, test } from 'vitest'
import type { Drawing } from '../../src/drawing/drawing.ts'
import { linesMark } from '../../src/drawing/make-mark.ts'
import { boundsOfMarks } from '../../src/drawing/mark-bounds.ts'
import type { Page } from '../../src/drawing/page.ts'
import { apply, identity } from '../../src/geometry/shape/matrix.ts'
import { frameOf } from '../../src/paper/frame.ts'
import { layOutPages } from '../../src/paper/lay-out-pages.ts'
import { lying, papers } from '../../src/paper/papers.ts'
import type { SheetToLay } from '../../src/paper/sheet-to-lay.ts'
import { plain } from '../../src/text/words.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { bundledFonts } from '../text/bundled-font.ts'

const fonts = bundledFonts()
const { body } = frameOf(papers.letter, defaultWorkshop)
const free = { width: body.right - body.left, height: body.top - body.bottom }

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

const onLetter = { paper: papers.letter, units: 'inch', workshop: defaultWorkshop } as const

function lay(...sheets: readonly (readonly [Drawing, ...Drawing[]])[]) {
  const arranged = sheets.map(drawings => ({ id: drawings[0].id, group: drawings[0].id, drawings }))
  const laid = layOutPages(arranged, onLetter, fonts)
  return { ...laid, pages: [...laid.pages()] }
}

const wordsOn = ({ furniture }: Page) => furniture.flatMap(m => (m.kind === 'text' ? [plain(m.words)] : []))
const isUpright = ({ paper }: Page) => paper.width === 8.5 * 25.4 && paper.height === 11 * 25.4
const isLying = ({ paper }: Page) => paper.width === 11 * 25.4 && paper.height === 8.5 * 25.4

test('a sheet that fits as exactly as can be stands upright; a hair more and the paper lies', () => {
  expect(isUpright(lay([drawing('plank', free.width, 50)]).pages[0]!)).toBe(true)
  expect(isLying(lay([drawing('plank', free.height + 0.001, 50)]).pages[0]!)).toBe(true)
})

test('small sheets share a page, and the page is headed by the parts that are on it', () => {
  const { pages, onPages } = lay([drawing('plank', 80, 40)], [drawing('post', 50, 50)])
  expect(pages.map(({ placed }) => placed.map(({ drawing }) => drawing.id))).toEqual([['plank', 'post']])
  expect([...onPages]).toEqual([
    ['plank', [1]],
    ['post', [1]],
  ])
  expect(wordsOn(pages[0]!)).toContain('plank, post')
})

test('what shares a page is read in the order of the sheets, whatever was placed first', () => {
  const sizes = [30, 80, 20, 60, 50]
  const { pages } = lay(...sizes.map((size, i) => [drawing(`${i}`, size, size)] as const))
  expect(pages.flatMap(({ placed }) => placed.map(({ drawing }) => drawing.id))).toEqual([
    '0',
    '1',
    '2',
    '3',
    '4',
  ])
})

test('the first arrangement is taken where it costs no page', () => {
  const arrangements = [drawing('wide', 150, 40), drawing('small', 40, 40)] as const
  expect(lay(arrangements).pages[0]!.placed[0]!.drawing.id).toBe('wide')
})

test('a sheet that would take hundreds of pages is left out, and what it wants and what there is are said', () => {
  const { count, misfits } = lay([drawing('mast', 40, 1e7)], [drawing('post', 50, 50)])
  expect(count).toBe(1)
  expect(misfits).toMatchObject([{ id: 'mast', wanted: { width: 40, height: 1e7 } }])
})

test('what fits a page without its words is one whole page, and the words lie on another', () => {
  const alone = drawing('plank', free.width, free.height)
  const sheet = {
    id: 'plank',
    group: 'plank',
    drawings: [drawing('both', free.width, free.height + 60)] as const,
    large: { drawing: alone, beside: [drawing('words', 100, 60)] as const },
  }
  const laid = layOutPages([sheet], onLetter, fonts)
  expect([laid.count, laid.large]).toEqual([2, []])
  const pages = [...laid.pages()]
  expect(pages.map(({ placed }) => placed.map(({ drawing }) => drawing.id))).toEqual([['plank'], ['words']])
  for (const { furniture } of pages)
    expect(furniture.filter(({ subject }) => subject === 'page-map')).toEqual([])
})

test('the words of a drawing that fits no page are printed without it, and that is said', () => {
  const mast = drawing('mast', 4000, 4000)
  const instead = { drawings: [mast] as const, beside: [[drawing('words', 100, 60)] as const] }
  const sheet = { id: 'mast', group: 'mast', drawings: [mast] as const, otherwise: [instead] }
  const { pages, misfits } = layOutPages([sheet], onLetter, fonts)
  const placed = [...pages()].flatMap(page => page.placed.map(({ drawing }) => drawing.id))
  expect(placed).toEqual(['words'])
  expect(misfits).toMatchObject([{ id: 'mast', wanted: { width: 4000 }, othersLaid: true }])
})

test('a drawing is put true to size into the upper left of the free space', () => {
  const { drawing: placed, matrix } = lay([drawing('plank', 100, 40)]).pages[0]!.placed[0]!
  expect({ ...matrix, e: 0, f: 0 }).toEqual(identity)
  const corner = apply(matrix, { x: placed.bounds.left, y: placed.bounds.top })
  expect(corner.x).toBeCloseTo(body.left, 9)
  expect(corner.y).toBeCloseTo(body.top, 9)
})

test('pages are in the order of the sheets, counted from 1, and each says which of how many it is', () => {
  const large = free.height - 10
  const { pages } = lay([drawing('a', 150, large)], [drawing('b', 150, large)], [drawing('c', 150, large)])
  expect(pages.map(p => [p.number, p.placed[0]!.drawing.id])).toEqual([
    [1, 'a'],
    [2, 'b'],
    [3, 'c'],
  ])
  expect(wordsOn(pages[1]!)).toContain('page 2 of 3')
})

test('pages that others come before are counted with them', () => {
  const laid = layOutPages([{ id: 'a', group: 'a', drawings: [drawing('a', 10, 10)] }], onLetter, fonts)
  const [page] = [...laid.pages({ before: 2, count: 3 })]
  expect(page!.number).toBe(3)
  expect(wordsOn(page!)).toContain('page 3 of 3')
})

test('pages are made when they are asked for, as often as they are', () => {
  const pages = layOutPages(
    [{ id: 'a', group: 'a', drawings: [drawing('a', 10, 10)] }],
    onLetter,
    fonts,
  ).pages()
  expect([...pages]).toEqual([...pages])
})

test.each(Object.values(papers))('on $name nothing that is printed reaches into the margins', paper => {
  const { margin } = defaultWorkshop.printer
  const pages = [paper, lying(paper)].flatMap(sheet => {
    const { body } = frameOf(sheet, defaultWorkshop)
    const whole = drawing('whole', body.right - body.left, body.top - body.bottom)
    const sheets = [{ id: 'whole', group: 'whole', drawings: [whole] as const }]
    return [...layOutPages(sheets, { paper, units: 'mm', workshop: defaultWorkshop }, fonts).pages()]
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

/** A sheet that is never cut into tiles: drawn whole, else as the first of these that pages hold. */
function layInstead(otherwise: NonNullable<SheetToLay['otherwise']>) {
  const sheet = { id: 'pier', group: 'pier', drawings: [drawing('pier', 500, 400)] as const, otherwise }
  const laid = layOutPages([sheet], onLetter, fonts)
  return { ...laid, drawn: [...laid.pages()].map(({ placed }) => placed.map(one => one.drawing.id)) }
}

test('what may not go over several pages is drawn as the first of its other ways that a page holds', () => {
  const { drawn } = layInstead([
    { drawings: [drawing('half', 250, 300)] },
    { drawings: [drawing('fifth', 100, 80)] },
    { drawings: [drawing('tenth', 50, 40)] },
  ])
  expect(drawn).toEqual([['fifth']])
})

test('a way whose words fit no page is passed over, and words that fit lie where there is room', () => {
  const alone = [drawing('alone', free.width - 1, free.height - 1)] as const
  const { drawn } = layInstead([
    { drawings: alone, beside: [[drawing('long words', 300, 500)]] },
    { drawings: alone, beside: [[drawing('words', 80, 100)], [drawing('table', 80, 90)]] },
  ])
  expect(drawn).toEqual([['alone'], ['words', 'table']])
})

test('where none of the ways fits, it is said how large the smallest is', () => {
  const { drawn, misfits } = layInstead([{ drawings: [drawing('half', 260, 300)] }])
  expect(drawn).toEqual([])
  expect(misfits).toMatchObject([{ id: 'pier', wanted: { width: 260, height: 300 } }])
})
