import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { layOutPacket } from '../../../src/app/lay-out-packet.ts'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { sides } from '../../../src/finding/side.ts'
import { shiftBounds } from '../../../src/geometry/measure/bounds.ts'
import { arrangeViews, inTwo } from '../../../src/sheet/mark-out/arrange-views.ts'
import type { DrawnView } from '../../../src/sheet/mark-out/draw-view.ts'
import { apart } from '../../drawing/ink-box.ts'
import { modelOf } from '../../model/model-of.ts'
import { fonts, keyText, said } from '../sheets-of.ts'

const demo = readFileSync(
  new URL('../../../examples/cliff-railway/cliff-railway.yaml', import.meta.url),
  'utf8',
)

/** A block with holes on so many of its sides. */
function block(size: string, count: number): string {
  const holes = (['front', 'left', 'top', 'right', 'bottom', 'back'] as const)
    .slice(0, count)
    .map(on => `      - { hole: h-${on}, on: ${on}, at: center, diameter: 4, depth: 6 }\n`)
  return `paperjig: 1\ntitle: Pier winch\nunits: mm\nparts:\n  cap:\n    size: ${size}\n    cuts:\n${holes.join('')}`
}

function printed(text: string, paper: string, part: string): readonly Drawing[] {
  const choices = { paper, parts: [part], sheets: ['mark-out'] }
  const { packet } = layOutPacket(modelOf(text), choices, fonts, undefined)
  return [...packet.pages].flatMap(({ placed }) => placed.map(({ drawing }) => drawing))
}

const viewsOn = (drawings: readonly Drawing[]): readonly string[] =>
  drawings.flatMap(({ marks }) => said({ marks: marks.filter(({ subject }) => subject === 'view') })).sort()
const scalesOf = (drawings: readonly Drawing[]): ReadonlySet<string> =>
  new Set(drawings.map(({ caption }) => caption.sheet))

/** Scales of ISO 5455 (from memory); none is smaller than the paper asks for where the views may stand on two pages. */
test.each([
  ['60 x 40 x 30', 5, 'letter', 'mark-out'],
  ['60 x 40 x 30', 5, 'a4', 'mark-out'],
  ['60 x 40 x 30', 5, 'a5', 'mark-out, reduced 1:2'],
  ['102 x 45 x 45', 6, 'a4', 'mark-out'],
  ['200 x 120 x 90', 6, 'a4', 'mark-out, reduced 1:2'],
  ['150 x 50 x 40', 6, 'a5', 'mark-out, reduced 1:2'],
])('a block of %s mm with holes on %i sides is on %s a %s', (size, count, paper, scale) => {
  const drawings = printed(block(size, count), paper, 'cap')
  expect([...scalesOf(drawings)]).toEqual([scale])
  const names = ['back', 'bottom', 'front, face side', 'left', 'right', 'top']
  expect(viewsOn(drawings)).toEqual(names.slice(6 - count))
})

test.each([
  ['winding-block', 'letter', 'mark-out'],
  ['winding-block', 'a5', 'mark-out, reduced 1:2'],
  ['side-frame', 'letter', 'mark-out'],
  ['side-frame', 'a5', 'mark-out, reduced 1:2'],
])('%s of the demo is on %s a %s', (part, paper, scale) => {
  expect([...scalesOf(printed(demo, paper, part))]).toEqual([scale])
})

/** So many dimensions that a fan of them all is far longer than the board. */
const dense = `paperjig: 1
title: Pier winch
units: inch
parts:
  cheek:
    size: 9 17/64 x 4 3/8 x 19/32
    transfer: mark-out
    cuts:
      - { slot: upper, at: { left: 1 1/64, top: 13/32 }, size: 1 3/8 x 5/16, depth: 3/8 }
      - { slot: lower, at: { left: 1 5/64, bottom: 13/32 }, size: 1 5/16 x 5/16, depth: 3/8 }
      - { notch: latch, on: top, at: { left: 4 1/8 }, size: 31/64 x 5/16 }
      - { notch: shoe, on: bottom, at: { left: 4 9/64 }, size: 33/64 x 3/8 }
      - { hole: cam, at: { left: 3 37/64, bottom: 1 9/16 }, diameter: 1/4 }
      - { hole: stop, at: { left: 3 39/64, bottom: 2 57/64 }, diameter: 3/16 }
      - { row: ladder, at: { left: 5 1/4, bottom: 9/16 }, toward: top, spacing: 29/64, count: 8, diameter: 1/8 }
      - { row: ladder-two, at: { left: 5 5/8, bottom: 9/16 }, toward: top, spacing: 29/64, count: 8, diameter: 1/8 }
      - { grid: rack, at: { right: 3/8, bottom: 5/8 }, spacing: 13/32 x 17/32, count: 5 x 4, diameter: 5/64, depth: 1/4 }
      - { row: pegs, on: top, at: { left: 5/8, front: 19/64 }, toward: right, spacing: 31/64, count: 6, diameter: 3/32, depth: 1/2 }
      - { groove: slide, on: back, at: { bottom: 2 }, width: 3/16, depth: 1/8 }
      - { rebate: lap, on: back, edge: left, size: 1/2 x 1/4 }
`

const tablesOf = (drawings: readonly Drawing[]): readonly Drawing[] =>
  drawings.filter(({ caption }) => caption.sheet === 'table of the mark-out')

test('crowded dimensions are left to the table before the scale is', () => {
  const drawings = printed(dense, 'letter', 'cheek')
  const shown = drawings.filter(drawing => viewsOn([drawing]).length > 0)
  expect([...scalesOf(shown)]).toEqual(['mark-out, reduced 1:2'])
  const words = drawings.map(keyText).join(' ')
  expect(words).toContain('Where a hole has no size in the drawing, the table says where it is.')
  // the upper holes of the ladders: 9/16 + 7 x 29/64
  expect(words).not.toContain('3 47/64')
  expect(tablesOf(drawings).flatMap(said).join(' ')).toContain('3 47/64')
})

test('a dense board has its views and its whole table on small paper', () => {
  const drawings = printed(dense, 'a5', 'cheek')
  expect(viewsOn(drawings)).toEqual(['back', 'bottom', 'front, face side', 'left', 'top'])
  const titles = tablesOf(drawings).map(drawing => said(drawing)[0])
  expect(titles.toSorted()).toEqual([1, 2, 3, 4].map(i => `Cheek · where everything stands, ${i} of 4`))
})

test('the words name the table that is on other paper by its title, wherever it comes to lie', () => {
  expect(printed(dense, 'a5', 'cheek').map(keyText).join(' ')).toContain(
    'Where everything stands is in the table “Cheek · where everything stands”, which is in 4 pieces.',
  )
})

test('views on two pages have the part’s name over them on both, and no symbol of a projection', () => {
  const drawings = printed(block('102 x 45 x 45', 6), 'a4', 'cap')
  const shown = drawings.filter(drawing => viewsOn([drawing]).length > 0)
  expect(shown.map(drawing => viewsOn([drawing]))).toEqual([
    ['bottom', 'front, face side', 'top'],
    ['back', 'left', 'right'],
  ])
  for (const { marks } of shown) expect(said({ marks })).toContain('Cap · true size')
  expect(drawings.flatMap(({ marks }) => marks.filter(({ subject }) => subject === 'projection'))).toEqual([])
  expect(drawings.map(keyText).join(' ')).toContain('Each view shows the side that it names')
})

test.each([
  [['front', 'left', 'top'], ['front', 'top'], ['left']],
  [
    ['front', 'back', 'bottom', 'edge:arm'],
    ['front', 'bottom'],
    ['back', 'edge:arm'],
  ],
  [['front', 'right'], ['front'], ['right']],
  // nothing but what stands in line with the front
  [['front', 'top', 'bottom'], ['front', 'top'], ['bottom']],
  [['front', 'bottom'], ['front'], ['bottom']],
] as const)('the views %j stand as %j on one paper and %j on the other', (faces, near, others) => {
  expect(inTwo(faces)).toEqual([near, others])
})

test('in rows no view touches another, and none is wider than it may be with more than one view in it', () => {
  const size = fc.integer({ min: 1, max: 200 })
  const bounds = fc.record({ left: size, right: size, bottom: size, top: size }).map(
    // about the origin of the face, and rarely the same on both sides of it
    ({ left, right, bottom, top }) => ({ left: -left, right, bottom: -bottom, top }),
  )
  fc.assert(
    fc.property(fc.array(bounds, { minLength: 1, maxLength: 6 }), size, (boxes, rows) => {
      const views = boxes.map((bounds, i) => ({
        view: { face: sides[i]! },
        bounds,
      })) as unknown as DrawnView[]
      const moves = arrangeViews(views, 'third', { rows })
      const put = views.map(({ view, bounds }) => {
        const { x, y } = moves.get(view.face)!
        return { ...shiftBounds(bounds, x, y), origin: y }
      })
      put.forEach((one, i) => {
        for (const other of put.slice(i + 1)) expect(apart(one, other, 0)).toBe(true)
      })
      for (const origin of new Set(put.map(one => one.origin))) {
        const row = put.filter(one => one.origin === origin)
        const width = Math.max(...row.map(one => one.right)) - Math.min(...row.map(one => one.left))
        if (row.length > 1) expect(width).toBeLessThanOrEqual(rows)
      }
    }),
  )
})
