import { expect, test } from 'vitest'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import { readModel } from '../../src/app/read-model.ts'
import type { Mark } from '../../src/drawing/mark.ts'
import type { Page } from '../../src/drawing/page.ts'
import { plain } from '../../src/text/words.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { apart, inkBox } from '../drawing/ink-box.ts'
import { bundledFonts } from '../text/bundled-font.ts'
import { papersToMeasure, plansToMeasure } from '../trueness/plans.ts'

const fonts = bundledFonts()

function packet(text: string, paper: string, sheets?: readonly string[]) {
  const { model, findings, style } = readModel({ text, file: 'plan.yaml' })
  const before = { findings, style, workshop: defaultWorkshop }
  const { packet, count } = layOutPacket(
    model!,
    { paper, ...(sheets && { sheets }) },
    fonts,
    undefined,
    before,
  )
  return { model: model!, pages: [...packet.pages], count }
}

const isCover = ({ label }: Page) => label?.startsWith('cover') === true
const textsIn = (marks: readonly Mark[]) => marks.flatMap(m => (m.kind === 'text' ? [m] : []))
const drawnOn = ({ placed }: Page) => placed.flatMap(({ drawing }) => drawing.marks)
const said = (page: Page) => textsIn(drawnOn(page)).map(({ words }) => plain(words))

const cases = plansToMeasure().flatMap(plan => papersToMeasure.map(paper => ({ ...plan, paper })))

test.each(cases)('on the cover of $name on $paper no words touch other words', ({ text, paper }) => {
  for (const page of packet(text, paper).pages.filter(isCover)) {
    const boxes = textsIn(drawnOn(page)).map(mark => ({ ...inkBox(fonts, mark), says: plain(mark.words) }))
    boxes.forEach((a, i) => {
      for (const b of boxes.slice(i + 1))
        expect(apart(a, b, 0.2), `“${a.says}” and “${b.says}” on ${page.label}`).toBe(true)
    })
  }
})

test.each(cases)(
  'the cover of $name on $paper names every part and says its stock whole',
  ({ text, paper }) => {
    const { model, pages } = packet(text, paper)
    const words = pages.filter(isCover).flatMap(said)
    for (const { label, stock, wood } of model.parts) {
      expect(words).toContain(label)
      const of = [stock, wood].filter(word => word !== undefined).join(', ')
      expect(words.some(line => line === of || line.endsWith(` · ${of}`) || of === '')).toBe(true)
    }
  },
)

test('viewers call the first pages the cover, and the list of contents leads there by one entry', () => {
  const [plan] = plansToMeasure().filter(({ name }) => name === 'cliff-railway.yaml')
  const { pages } = packet(plan!.text, 'letter')
  const labels = pages.map(({ label }) => label)
  expect(labels.slice(0, 3)).toEqual(['cover 1', 'cover 2', undefined])
  expect(pages.map(({ bookmarks }) => bookmarks).slice(0, 3)).toEqual([[['Cover']], [['Cover']], undefined])
  expect(
    packet(faulty, 'a4')
      .pages.map(({ label }) => label)
      .slice(0, 2),
  ).toEqual(['cover', undefined])
})

test.each(['letter', 'a4', 'tabloid'])(
  'the templates of the demo take at most one page more of %s than their areas alone',
  paper => {
    const [plan] = plansToMeasure().filter(({ name }) => name === 'cliff-railway.yaml')
    const { model } = readModel({ text: plan!.text, file: 'plan.yaml' })
    const { count, areaBound } = layOutPacket(model!, { paper, sheets: ['template'] }, fonts, undefined)
    expect(count).toBeGreaterThanOrEqual(areaBound)
    expect(count - areaBound).toBeLessThanOrEqual(1)
  },
)

const faulty = `paperjig: 1
title: Gate
units: mm
parts:
  sound: { size: 120 x 70 x 20, corners: 9 }
  one: { size: 120 x 70 x 20, corners: 9, make: 2, cuts: [ { hole: pin, at: { left: 10 }, diameter: 6 } ] }
  two: { size: 120 x 70 x 20, corners: 9, cuts: [ { hole: pin, at: { left: 10 }, diameter: 6 }, { hole: peg, at: { bottom: 9 }, diameter: 6 } ] }
`

test.each(['template', 'mark-out'])(
  'every %s says by its title what the check found wrong with its part, and those of sound parts say nothing',
  kind => {
    const { pages } = packet(faulty, 'a4', [kind])
    const titlesOf = (part: string) =>
      pages
        .flatMap(({ placed }) => placed)
        .filter(({ drawing }) => drawing.caption.part === part)
        .map(({ drawing }) =>
          textsIn(drawing.marks)
            .filter(({ subject }) => subject === 'title')
            .map(({ words }) => plain(words))
            .join(' '),
        )
    const error = 'error: hole pin of one has no place on the front; it wants a distance from bottom or top'
    const expected = [
      ['Sound', 1, /piece( 1 of 1)?$/],
      ['One', kind === 'template' ? 2 : 1, new RegExp(`${error}$`)],
      ['Two', 1, /2 errors: settle them before anything is cut$/],
    ] as const
    for (const [part, count, ending] of expected) {
      const titles = titlesOf(part)
      expect(titles).toHaveLength(count)
      for (const title of titles) expect(title).toMatch(ending)
    }
  },
)
