import { expect, test } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { boundsOfMarks } from '../../../src/drawing/mark-bounds.ts'
import { partFields } from '../../../src/sheet/cards/blank-card.ts'
import type { Block, Card } from '../../../src/sheet/cards/card.ts'
import { blankCardPages, type CardLayout, cardPages } from '../../../src/sheet/cards/card-pages.ts'
import { loadFont } from '../../../src/text/font.ts'
import { fontFiles } from '../../text/bundled-font.ts'

const fonts = { regular: loadFont(fontFiles('regular')), bold: loadFont(fontFiles('bold')) }
/** What the usual margins leave of Letter and of A4, and something smaller than any paper in a shop. */
const rooms = { Letter: [189, 222], A4: [183, 240], 'half of A5': [100, 60] } as const
const layout = (paper: keyof typeof rooms, perPage: 1 | 2): CardLayout => ({
  room: { width: rooms[paper][0], height: rooms[paper][1] },
  perPage,
  caption: { plan: '', sheet: '' },
})
const textsOf = ({ marks }: Drawing): readonly string[] =>
  marks.flatMap(mark => (mark.kind === 'text' ? [mark.words.join('')] : []))
const timesIn = (drawing: Drawing, text: string): number =>
  textsOf(drawing).filter(found => found === text).length

const hole = (id: string): Block => ({
  heading: [{ label: 'hole', share: 1, text: id }],
  entries: ['from', 'and from', 'diameter', 'depth'].map(what => ({ what, value: { kind: 'open' } })),
})
const cardOf = (holes: number): Card => ({
  fields: partFields({ name: 'sley' }),
  sideNames: { front: 'warp side' },
  blocks: Array.from({ length: holes }, (_, i) => hole(`h-${i}`)),
})

for (const paper of ['Letter', 'A4'] as const) {
  for (const perPage of [1, 2] as const) {
    test(`nothing of ${perPage} blank cards on ${paper} stands outside the room of the page`, () => {
      const [drawing] = blankCardPages(perPage, layout(paper, perPage), fonts)
      const { left, bottom, right, top } = boundsOfMarks(fonts, drawing!.marks)
      expect(Math.min(left, bottom)).toBeGreaterThanOrEqual(0)
      expect(right).toBeLessThanOrEqual(drawing!.bounds.right)
      expect(top).toBeLessThanOrEqual(drawing!.bounds.top)
    })

    test(`${perPage} blank cards on ${paper} have six sides each, two holes at least, and no word cut short`, () => {
      const [drawing] = blankCardPages(perPage, layout(paper, perPage), fonts)
      const sides = [
        'front: the face side',
        'back, seen from behind',
        'left end',
        'right end',
        'top edge',
        'bottom edge',
      ]
      for (const side of sides) expect(timesIn(drawing!, side)).toBe(perPage)
      expect(timesIn(drawing!, 'diameter, or size')).toBeGreaterThanOrEqual(2 * perPage)
      expect(textsOf(drawing!).filter(text => text.includes('…'))).toEqual([])
    })
  }
}

test('three blank cards at two a page are on two pages, and only the full one is cut apart', () => {
  const pages = blankCardPages(3, layout('A4', 2), fonts)
  const cut = pages.map(({ marks }) => marks.filter(({ subject }) => subject === 'cut-apart').length)
  expect(cut).toEqual([1, 0])
})

test('holes that find no room go on to another card of the same part, in their order, each once', () => {
  const pages = cardPages([cardOf(60)], layout('Letter', 1), fonts)
  expect(pages.length).toBeGreaterThan(1)
  for (const page of pages) expect(timesIn(page, 'sley')).toBe(1)
  const holes = pages.flatMap(textsOf).filter(text => text.startsWith('h-'))
  expect(holes).toEqual(Array.from({ length: 60 }, (_, i) => `h-${i}`))
  expect(pages.map(page => timesIn(page, 'left end'))).toEqual(pages.map((_, i) => (i === 0 ? 1 : 0)))
})

test('where a card has no room for a single hole it is drawn without, and there is an end to it', () => {
  expect(cardPages([cardOf(3)], layout('half of A5', 2), fonts).length).toBeLessThanOrEqual(2)
})

test('a side is called by the maker’s own word too', () => {
  expect(
    timesIn(cardPages([cardOf(0)], layout('A4', 1), fonts)[0]!, 'front: the face side (warp side)'),
  ).toBe(1)
})
