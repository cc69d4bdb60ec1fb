import { expect, test } from 'vitest'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import type { Drawing } from '../../src/drawing/drawing.ts'
import { textMark } from '../../src/drawing/make-mark.ts'
import type { Text } from '../../src/drawing/mark.ts'
import type { Placed } from '../../src/drawing/page.ts'
import { textBox } from '../../src/drawing/text-box.ts'
import { identity, quarterTurns } from '../../src/geometry/shape/matrix.ts'
import { readUpright } from '../../src/paper/read-upright.ts'
import { plain } from '../../src/text/words.ts'
import { modelOf } from '../model/model-of.ts'
import { bundledFonts } from '../text/bundled-font.ts'
import { plansToMeasure } from '../trueness/plans.ts'

const fonts = bundledFonts()

function drawing(...degrees: readonly number[]): Drawing {
  return {
    id: 'plank',
    caption: { plan: 'Pier', sheet: 'mark-out', part: 'plank' },
    marks: degrees.map((angle, i) =>
      textMark(
        { layer: 'dimension' },
        [`${angle}`, { whole: '1', over: '3', under: '16' }],
        { x: 20 * i, y: 5 },
        5,
        {
          align: (['start', 'middle', 'end'] as const)[i % 3]!,
          angle: (angle / 180) * Math.PI,
        },
      ),
    ),
    bounds: { left: 0, bottom: 0, right: 100, top: 100 },
    keepWhole: [],
  }
}

const texts = ({ drawing }: Placed): readonly Text[] =>
  drawing.marks.flatMap(mark => (mark.kind === 'text' ? [mark] : []))

/** Degrees from reading to the right, as the page is held with its title on top; more than -180 and at most 180. */
function onPage({ angle }: Text, { matrix }: Placed): number {
  const degrees = Math.round(((angle + Math.atan2(matrix.b, matrix.a)) / Math.PI) * 180)
  return degrees - 360 * Math.ceil((degrees - 180) / 360)
}

test.each([
  // drawn, on a page that the drawing is turned on by a quarter, counter-clockwise
  [0, 90],
  [90, 0],
  [45, -45],
  [-45, 45],
  [-90, 0],
  // upside down on purpose
  [180, -90],
  [135, -135],
])('lettering drawn at %i° is read at %i° where its drawing is turned', (drawn, read) => {
  const placed = readUpright({ drawing: drawing(drawn), matrix: quarterTurns(1) }, fonts)
  expect(texts(placed).map(text => onPage(text, placed))).toEqual([read])
})

test('what is turned to be read stays in its box', () => {
  const before = drawing(90, 90, 90, 30, 45, 60)
  const after = readUpright({ drawing: before, matrix: quarterTurns(1) }, fonts)
  texts(after).forEach((text, i) => {
    const [was, is] = [textBox(fonts, texts({ drawing: before, matrix: identity })[i]!), textBox(fonts, text)]
    for (const side of ['left', 'right', 'bottom', 'top'] as const) expect(is[side]).toBeCloseTo(was[side], 9)
  })
})

test('a drawing that lies as it was drawn is left alone', () => {
  const placed = { drawing: drawing(0, 90, 180), matrix: identity }
  expect(readUpright(placed, fonts)).toEqual(placed)
})

// ISO 129-1, from memory: values are read from the bottom of the sheet or from its right
test.each(plansToMeasure().flatMap(plan => ['letter', 'a4', 'a5'].map(paper => ({ ...plan, paper }))))(
  'on the mark-outs of $name on $paper everything is read from the bottom or from the right',
  ({ text, paper }) => {
    const { packet } = layOutPacket(modelOf(text), { paper, sheets: ['mark-out'] }, fonts, undefined)
    for (const page of packet.pages) {
      for (const placed of page.placed) {
        const astray = texts(placed).filter(one => Math.abs(onPage(one, placed) - 45) > 45)
        expect(astray.map(({ words }) => plain(words))).toEqual([])
      }
    }
  },
)
