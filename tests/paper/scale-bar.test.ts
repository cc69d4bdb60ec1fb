import { expect, test } from 'vitest'
import { lineStyles } from '../../src/drawing/line-role.ts'
import type { Mark } from '../../src/drawing/mark.ts'
import { contourBounds } from '../../src/geometry/measure/bounds.ts'
import { distance, type Point } from '../../src/geometry/shape/point.ts'
import { scaleBar } from '../../src/paper/scale-bar.ts'
import { plain } from '../../src/text/words.ts'
import { apart, inkBox } from '../drawing/ink-box.ts'
import { bundledFonts } from '../text/bundled-font.ts'

const from = { x: 7, y: 11 }
const directions = ['across', 'along'] as const

const bar = (direction: 'across' | 'along', length: number, unit: 'inch' | 'mm' = 'inch') =>
  scaleBar({ direction, from, length }, unit)

/** The main line of one side of the bar. */
function mainLine(marks: readonly Mark[], unit: string): readonly [Point, Point] {
  const mark = marks.find(m => m.kind === 'path' && m.role === 'wide' && m.subject?.endsWith(unit))
  if (mark?.kind !== 'path') throw new Error(`no ${unit} line`)
  const segment = mark.contours[0]!.segments[0]!
  return [segment.from, segment.to]
}

/** Whole inches and whole centimetres that fit, at most six inches, which is the shortest rule of a bench. 1 in = 25.4 mm. */
test.each([
  [200, 6, 15],
  [152.4, 6, 15],
  [152.39, 5, 15],
  [150, 5, 15],
  [149.9, 5, 14],
  [100, 3, 10],
  [80, 3, 8],
])(
  'in a room of %d mm one side is %d inches long and the other %d centimetres, exactly',
  (room, inches, cm) => {
    for (const direction of directions) {
      for (const unit of ['inch', 'mm'] as const) {
        const marks = bar(direction, room, unit)
        const [start, inchEnd] = mainLine(marks, 'inch')
        const [mmStart, mmEnd] = mainLine(marks, 'mm')
        expect(start).toEqual(from)
        expect(mmStart).toEqual(from)
        expect(distance(start, inchEnd)).toBeCloseTo(inches * 25.4, 9)
        expect(distance(mmStart, mmEnd)).toBeCloseTo(cm * 10, 9)
      }
    }
  },
)

test('across runs to the right and along runs up, without a trace of a slope', () => {
  expect(mainLine(bar('across', 160), 'inch')[1]).toEqual({ x: 7 + 6 * 25.4, y: 11 })
  expect(mainLine(bar('along', 160), 'inch')[1]).toEqual({ x: 7, y: 11 + 6 * 25.4 })
})

test.each([
  ['inch', 25.4 / 8, 49],
  ['mm', 1, 151],
] as const)(
  'ticks of the %s side stand at every whole step from the start, square to the bar',
  (unit, step, count) => {
    const ticks = bar('across', 152.4).flatMap(m =>
      m.kind === 'path' && m.role === 'cut' && m.subject?.endsWith(unit) ? m.contours : [],
    )
    expect(ticks).toHaveLength(count)
    ticks.forEach((tick, i) => {
      const { from: foot, to } = tick.segments[0]!
      expect(foot.x).toBeCloseTo(7 + i * step, 9)
      expect([foot.y, to.x]).toEqual([11, foot.x])
    })
  },
)

test.each([
  ['inch', ['1', '2', '3', '4', '5', '6', 'in']],
  ['mm', [...Array.from({ length: 15 }, (_, i) => `${10 * (i + 1)}`), 'mm']],
] as const)('the %s side says its numbers and its unit', (unit, wanted) => {
  const words = bar('across', 160).flatMap(m =>
    m.kind === 'text' && m.subject?.endsWith(unit) ? [plain(m.words)] : [],
  )
  expect(words).toEqual(wanted)
})

test.each(directions)('a number stands over its own tick: %s', direction => {
  const marks = bar(direction, 160)
  for (const mark of marks) {
    if (mark.kind !== 'text' || mark.align !== 'middle') continue
    const unit = mark.subject?.endsWith('inch') ? 25.4 : 1
    const away = direction === 'across' ? mark.at.x - from.x : mark.at.y - from.y
    expect(away).toBeCloseTo(Number(plain(mark.words)) * unit, 9)
  }
})

test('the plan’s units stand above the line or to the left of it, the other ones opposite', () => {
  const aside = (unit: 'inch' | 'mm', direction: 'across' | 'along') => {
    const name = bar(direction, 160, unit).find(m => m.kind === 'text' && m.subject?.endsWith(unit))
    if (name?.kind !== 'text') throw new Error('no number')
    return direction === 'across' ? name.at.y - from.y : from.x - name.at.x
  }
  for (const direction of directions) {
    for (const unit of ['inch', 'mm'] as const) expect(aside(unit, direction)).toBeGreaterThan(0)
  }
})

test.each(directions)('no number’s ink touches another or a tick: %s', direction => {
  const fonts = bundledFonts()
  const marks = bar(direction, 160)
  const boxes = marks.flatMap(m => (m.kind === 'text' ? [inkBox(fonts, m)] : []))
  const half = lineStyles.cut.width / 2
  const ticks = marks.flatMap(m => (m.kind === 'path' ? m.contours.map(contourBounds) : []))
  boxes.forEach((box, i) => {
    for (const other of boxes.slice(i + 1)) expect(apart(box, other, 0.3)).toBe(true)
    for (const tick of ticks) expect(apart(box, tick, half + 0.2)).toBe(true)
  })
})
