import fc from 'fast-check'
import { expect, test } from 'vitest'
import { boundsOfMarks } from '../../../src/drawing/mark-bounds.ts'
import { contourBounds } from '../../../src/geometry/measure/bounds.ts'
import { identity } from '../../../src/geometry/shape/matrix.ts'
import { distance } from '../../../src/geometry/shape/point.ts'
import { papers } from '../../../src/paper/papers.ts'
import { examplesFor } from '../../../src/paper/scale-sheet/reading-example.ts'
import { scaleSheet } from '../../../src/paper/scale-sheet/scale-sheet.ts'
import { vernierLines, verniers } from '../../../src/paper/scale-sheet/vernier.ts'
import { plain } from '../../../src/text/words.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { apart, inkBox } from '../../drawing/ink-box.ts'
import { bundledFonts } from '../../text/bundled-font.ts'

const fonts = bundledFonts()
const sheetOn = (paper: (typeof papers)[keyof typeof papers]) => {
  const sheet = scaleSheet(paper, defaultWorkshop, fonts)
  if (sheet === undefined) throw new Error(`no scale sheet on ${paper.name}`)
  return sheet
}

/** Reads as a maker does: the rule's last line before the end, and the vernier line that meets one of the rule's best. */
function read(end: number, unit: 'mm' | 'inch'): number {
  const { space, parts } = verniers[unit]
  const misses = vernierLines(verniers[unit]).map(back => {
    const spaces = (end - back) / space
    return Math.abs(spaces - Math.round(spaces))
  })
  const line = misses.slice(0, parts).reduce((best, miss, i) => (miss < misses[best]! ? i : best), 0)
  // an end that stands a hair before a line of the rule reads as standing on it
  const whole = Math.floor(end / space + 1 / (2 * parts))
  return whole * space + (line * space) / parts
}

test('the vernier reads any end of a bar to the nearest tenth of a millimetre and the nearest 128th of an inch', () => {
  fc.assert(
    fc.property(fc.double({ min: 100, max: 260, noNaN: true }), end => {
      expect(Math.abs(read(end, 'mm') - end)).toBeLessThanOrEqual(0.05 + 1e-9)
      expect(Math.abs(read(end, 'inch') - end)).toBeLessThanOrEqual(25.4 / 256 + 1e-9)
    }),
  )
})

test('the worked examples are read as they say', () => {
  for (const { unit, spaces, line } of examplesFor(180)) {
    const { space, parts } = verniers[unit]
    const end = spaces * space + (line * space) / parts
    expect(read(end, unit)).toBeCloseTo(end, 9)
  }
  const said = sheetOn(papers.a4).page.furniture.flatMap(m => (m.kind === 'text' ? [plain(m.words)] : []))
  expect(said).toContain('just past 179 mm, line 3 meets: 179.3 mm')
  expect(said).toContain('just past 7 1/16", line 5 meets: 7 13/128"')
})

test.each([papers.letter, papers.a4, papers.legal, papers.a3, papers.tabloid])(
  'on $name the bars are 180 mm across and 240 mm along',
  paper => {
    expect(sheetOn(paper).bars).toEqual({ across: 180, along: 240 })
  },
)

test.each(Object.values(papers))(
  'on $name the bars and the square are as long as the command says',
  paper => {
    const { page, bars } = sheetOn(paper)
    for (const direction of ['across', 'along'] as const) {
      const line = page.furniture.find(
        m => m.kind === 'path' && m.role === 'wide' && m.subject === `bar-${direction}`,
      )
      if (line?.kind !== 'path') throw new Error('no bar')
      const { from, to } = line.contours[0]!.segments[0]!
      expect(distance(from, to)).toBeCloseTo(bars[direction], 9)
    }
    const words = page.furniture.flatMap(m => (m.kind === 'text' ? [plain(m.words)] : [])).join(' ')
    expect(words).toContain(`--bars ${bars.across}x${bars.along}`)
    const square = page.furniture.find(
      m => m.kind === 'path' && m.role === 'cut' && m.subject === 'scale-sheet' && m.contours[0]!.closed,
    )
    if (square?.kind !== 'path') throw new Error('no square')
    const box = contourBounds(square.contours[0]!)
    expect(box.right - box.left).toBeCloseTo(Math.min(bars.across, bars.along) - 30, 9)
    expect(box.top - box.bottom).toBeCloseTo(box.right - box.left, 9)
    expect(page.correction).toEqual(identity)
  },
)

test.each(Object.values(papers))(
  'on $name everything keeps within the margins, and no words touch others',
  paper => {
    const { page } = sheetOn(paper)
    const { margin } = defaultWorkshop.printer
    const box = boundsOfMarks(fonts, page.furniture)
    expect(box.left).toBeGreaterThanOrEqual(margin.left)
    expect(box.bottom).toBeGreaterThanOrEqual(margin.bottom)
    expect(box.right).toBeLessThanOrEqual(page.paper.width - margin.right)
    expect(box.top).toBeLessThanOrEqual(page.paper.height - margin.top)
    const texts = page.furniture.flatMap(m =>
      m.kind === 'text' ? [{ box: inkBox(fonts, m), says: plain(m.words) }] : [],
    )
    texts.forEach(({ box, says }, i) => {
      for (const other of texts.slice(i + 1))
        expect([says, other.says, apart(box, other.box, 0.1)]).toEqual([says, other.says, true])
    })
  },
)

test('paper that has no room for the words has no scale sheet', () => {
  expect(scaleSheet({ name: 'card', width: 100, height: 100 }, defaultWorkshop, fonts)).toBeUndefined()
})
