import { expect, test } from 'vitest'
import { makeSheets } from '../../src/sheet/registry.ts'
import { chooseTransfer } from '../../src/sheet/transfer.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { modelOf, onlyPart, planOf } from '../model/model-of.ts'
import { fonts, said } from './sheets-of.ts'

const chosen = (body: string, size?: string) => {
  const { by, because } = chooseTransfer(onlyPart(modelOf(planOf(body, size))), defaultWorkshop)
  return `${by}: ${because}`
}
const cuts = (...lines: string[]) => `    cuts:\n${lines.map(line => `      - { ${line} }\n`).join('')}`
const outline = (...steps: string[]) => {
  const text = `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  plank:\n    thickness: 10\n    outline: [ ${steps.map(step => `{ ${step} }`).join(', ')} ]\n`
  const { by, because } = chooseTransfer(onlyPart(modelOf(text)), defaultWorkshop)
  return `${by}: ${because}`
}

/** Common practice, no source: as trade.md has it; the circle templates are those of a usual shop, in mm 1 to 20 and on by 2 to 60. */
test.each([
  ['a plain rectangle', '', 'mark-out: square, nothing to cut out'],
  ['one with a hole', cuts('hole: a, at: center, diameter: 4'), 'mark-out: square, 1 feature'],
  ['corners that a circle template draws', '    corners: 8\n', 'mark-out: square, nothing to cut out'],
  ['corners that none draws', '    corners: 8.3\n', 'template: the outline is curved'],
  ['corners larger than any', '    corners: { top-left: 35 }\n', 'template: the outline is curved'],
  ['round ends that a circle template draws', '    ends: round\n', 'mark-out: square, nothing to cut out'],
  [
    'a chamfered corner',
    '    corners: { top-left: { chamfer: 5 } }\n',
    'mark-out: square, nothing to cut out',
  ],
  ['a notch', cuts('notch: n, on: bottom, at: { left: 10 }, size: 20 x 5'), 'mark-out: square, 1 feature'],
  [
    'eight holes on a face',
    cuts('row: r, at: { left: 10, bottom: 20 }, toward: right, spacing: 8, count: 8, diameter: 3'),
    'mark-out: square, 8 features',
  ],
  [
    'nine holes on a face, each by itself',
    cuts(
      ...Array.from(
        { length: 9 },
        (_, i) => `hole: h${i}, at: { left: ${10 * i + 5}, bottom: 20 }, diameter: 3`,
      ),
    ),
    'template: 9 features to set out on the front',
  ],
  [
    'nine holes in a row, which the fence is set for once',
    cuts('row: r, at: { left: 10, bottom: 20 }, toward: right, spacing: 8, count: 9, diameter: 3'),
    'mark-out: square, 9 features in 1 setting',
  ],
  [
    'a grid of four lines',
    cuts('grid: g, at: { left: 10, bottom: 5 }, spacing: 8 x 8, count: 10 x 4, diameter: 3'),
    'mark-out: square, 40 features in 4 settings',
  ],
  [
    'a grid of nine lines',
    cuts('grid: g, at: { left: 10, bottom: 4 }, spacing: 10 x 4, count: 2 x 9, diameter: 2'),
    'template: 9 features to set out on the front',
  ],
  [
    'a circle of nine holes, which no fence sets',
    cuts('hole-circle: c, at: center, circle: 24, count: 9, diameter: 3'),
    'template: 9 features to set out on the front',
  ],
  [
    'ten holes on two faces',
    cuts(
      'row: r, at: { left: 10, bottom: 20 }, toward: right, spacing: 8, count: 5, diameter: 3',
      'row: s, on: top, at: { left: 10, front: 10 }, toward: right, spacing: 8, count: 5, diameter: 3',
    ),
    'mark-out: square, 10 features in 2 settings',
  ],
  ['a round window', cuts('cut-out: w, at: center, round: 21'), 'template: a cut-out is curved'],
  ['a hole without a place', cuts('hole: a, diameter: 4'), 'mark-out: square, nothing to cut out'],
])('%s', (_, body, words) => {
  expect(chosen(body)).toBe(words)
})

test.each([
  [
    ['to: [0, 0]', 'to: [80, 0]', 'to: [80, 30]', 'to: [0, 40]'],
    'template: an edge is not square to the others',
  ],
  [
    ['to: [0, 0]', 'to: [80, 0]', 'to: [80, 30]', 'arc: [0, 30], bend: 40'],
    'template: the outline is curved',
  ],
  [
    ['to: [0, 0]', 'to: [80, 0]', 'to: [80, 30]', 'to: [40, 30]', 'to: [40, 40]', 'to: [0, 40]'],
    'mark-out: square, nothing to cut out',
  ],
])('an outline %j', (steps, words) => {
  expect(outline(...steps)).toBe(words)
})

test.each(['template', 'mark-out'] as const)(
  'the plan may ask for a %s, and then the sheet says that it did',
  transfer => {
    const model = modelOf(planOf(`    transfer: ${transfer}\n`))
    const sheets = makeSheets({ model, workshop: defaultWorkshop, fonts })
    expect(sheets.map(({ kind }) => kind)).toEqual([transfer])
    expect(said(sheets[0]!.drawings[0]).join(' ')).toContain(`Why a ${transfer}: the plan says so.`)
  },
)

test('every part has one of the two, and where one alone is wanted every part has that', () => {
  const text = `${planOf('')}  wheel: { thickness: 5, round: 33 }\n`
  const context = { model: modelOf(text), workshop: defaultWorkshop, fonts }
  const kinds = (...wanted: ('template' | 'mark-out')[]) =>
    makeSheets(context, wanted.length > 0 ? wanted : undefined).map(({ part, kind }) => `${part} ${kind}`)
  expect(kinds()).toEqual(['plank mark-out', 'wheel template'])
  expect(kinds('template', 'mark-out')).toEqual(['plank mark-out', 'wheel template'])
  expect(kinds('template')).toEqual(['plank template', 'wheel template'])
  expect(kinds('mark-out')).toEqual(['plank mark-out', 'wheel mark-out'])
})
