import { expect, test } from 'vitest'
import type { Caption } from '../../src/drawing/drawing.ts'
import type { Mark } from '../../src/drawing/mark.ts'
import { boundsOfMarks } from '../../src/drawing/mark-bounds.ts'
import { frameOf } from '../../src/paper/frame.ts'
import { furniture } from '../../src/paper/furniture.ts'
import { lying, papers } from '../../src/paper/papers.ts'
import { plain } from '../../src/text/words.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { apart, inkBox } from '../drawing/ink-box.ts'
import { bundledFonts } from '../text/bundled-font.ts'

const fonts = bundledFonts()
const caption: Caption = {
  plan: 'Cliff railway car, 1:16',
  sheet: 'template for the face side',
  part: 'Side frame',
  pieces: 'piece 2 of 2, mirrored',
}

const small = { name: 'small', width: 100, height: 100 }
const papersAndSmall = [...Object.values(papers).flatMap(p => [p, lying(p)]), small]

const marksOn = (paper: typeof small, more: Partial<Caption> = {}, number = 1, count = 4): readonly Mark[] =>
  furniture(
    frameOf(paper, defaultWorkshop),
    'inch',
    fonts,
  )({ captions: [{ ...caption, ...more }], number, count })

const texts = (marks: readonly Mark[]) => marks.flatMap(m => (m.kind === 'text' ? [plain(m.words)] : []))

test('a page says the plan, the part, the piece, which page it is, and to print at 100 %', () => {
  const said = texts(marksOn(papers.letter)).join('\n')
  for (const words of [
    'Cliff railway car, 1:16',
    'Side frame',
    'piece 2 of 2, mirrored',
    'page 1 of 4',
    'print at 100 %',
  ])
    expect(said).toContain(words)
})

test('a page warns, and defers to the machine’s manual, the local rules and a teacher', () => {
  const said = texts(marksOn(papers.letter)).join('\n')
  for (const words of ['manual', 'local rules', 'teaching', 'unplug', 'Eyes']) expect(said).toContain(words)
})

test('a page carries a scale bar across and one along, in inches and in millimetres', () => {
  const subjects = new Set(marksOn(papers.letter).map(m => m.subject))
  for (const subject of ['scale-across-inch', 'scale-across-mm', 'scale-along-inch', 'scale-along-mm'])
    expect(subjects).toContain(subject)
})

test.each(papersAndSmall)('on $name ($width x $height) no lettering touches other lettering', paper => {
  const long = {
    part: 'A side frame with a label that goes on and on, far beyond what any page can hold in one line',
    plan: 'The cliff railway of a town that has more to say about its railway than fits on any page',
  }
  for (const more of [{}, long]) {
    const boxes = marksOn(paper, more, 100, 100).flatMap(m =>
      m.kind === 'text' ? [{ box: inkBox(fonts, m), says: plain(m.words) }] : [],
    )
    boxes.forEach(({ box, says }, i) => {
      for (const other of boxes.slice(i + 1)) {
        expect([says, other.says, apart(box, other.box, 0.2)]).toEqual([says, other.says, true])
      }
    })
  }
})

test.each(papersAndSmall)('on $name ($width x $height) furniture stays out of the body', paper => {
  const { body } = frameOf(paper, defaultWorkshop)
  for (const mark of marksOn(paper)) expect(apart(boundsOfMarks(fonts, [mark]), body, 0)).toBe(true)
})

test('a sheet about the whole plan is headed by the plan’s title', () => {
  const { part: _, pieces: __, ...whole } = caption
  const furnish = furniture(frameOf(papers.a4, defaultWorkshop), 'mm', fonts)
  const marks = furnish({ captions: [whole], number: 1, count: 1 })
  expect(texts(marks)[0]).toBe('Cliff railway car, 1:16')
})

/** Two pages side by side of one long drawing, and four of a large one. */
const rectangleAt = (left: number, bottom: number) => ({
  left,
  right: left + 160,
  bottom,
  top: bottom + 100,
})
const maps = {
  long: [rectangleAt(0, 0), rectangleAt(160, 0)],
  large: [rectangleAt(0, 0), rectangleAt(160, 0), rectangleAt(0, 100), rectangleAt(160, 100)],
}

test.each(
  [papers.a5, lying(papers.a5), papers.a4, papers.letter].flatMap(paper => [
    {
      paper,
      map: 'long',
      joining: ['Fold at –··–: right side over page 110, letter on letter.', 'Fold at –··–: right over 110.'],
    } as const,
    {
      paper,
      map: 'large',
      joining: [
        'Fold at –··–: right side over page 110, lower side over pages 116, 117, letter on letter.',
        'Fold at –··–: right over 110, lower over 116, 117.',
      ],
    } as const,
  ]),
)(
  'on $paper.name ($paper.width wide) it is said how pages are joined, and not cut short: $joining.0',
  facts => {
    const { paper, map, joining } = facts
    const cells = maps[map].map((box, i) => ({ box, page: 109 + i }))
    const marks = furniture(
      frameOf(paper, defaultWorkshop, 'tile'),
      'mm',
      fonts,
    )({ captions: [caption], number: 109, count: 120, tile: { map: { outline: [], cells }, joining } })
    expect(texts(marks).filter(words => joining.some(one => one === words))).toHaveLength(1)
    const words = marks.flatMap(m => (m.kind === 'text' && m.subject === 'page' ? [inkBox(fonts, m)] : []))
    const mapped = boundsOfMarks(
      fonts,
      marks.filter(({ subject }) => subject === 'page-map'),
    )
    for (const box of words) expect(apart(box, mapped, 0)).toBe(true)
  },
)
