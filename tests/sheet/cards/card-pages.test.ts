import { expect, test } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { lettering } from '../../../src/drawing/lettering.ts'
import { boundsOfMarks, markBounds } from '../../../src/drawing/mark-bounds.ts'
import { partFields } from '../../../src/sheet/cards/blank-card.ts'
import type { Block, Card } from '../../../src/sheet/cards/card.ts'
import { blankCardPages, type CardLayout, cardPages } from '../../../src/sheet/cards/card-pages.ts'
import { loadFont } from '../../../src/text/font.ts'
import { fontFiles } from '../../text/bundled-font.ts'

const fonts = { regular: loadFont(fontFiles('regular')), bold: loadFont(fontFiles('bold')) }
/** What the usual margins leave of Letter, A4 and A5, and something smaller than any paper in a shop. */
const rooms = { Letter: [189, 222], A4: [183, 240], A5: [121, 152], 'half of A5': [100, 60] } as const
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

/** What cards of plans say most, and what of it is longest. */
const worded: Card = {
  fields: partFields({
    name: 'Post that the gate of the upper station hangs on, with the hinges',
    make: '12',
    mirrored: 'yes',
    from: 'plank',
    page: '14',
  }),
  sideNames: { left: 'nose', top: 'deck' },
  blocks: [
    {
      heading: [
        { label: 'hole circle: its name', share: 5, text: 'the-upper-hinge' },
        { label: 'on side', share: 2, text: 'bottom' },
        { label: 'how many', share: 2, text: '10 × 12' },
      ],
      entries: [
        ['place, from', 'bottom', '12.5 mm'],
        ['spacing, toward', 'right', '1 41/64"'],
        ['circle of centres', undefined, 'centre'],
        ['chamfer bottom right', undefined, 'through'],
        ['radius bottom right', undefined, 'for axle'],
        ['counterbore angle', undefined, '120°'],
        ['width at the right', undefined, '100 mm'],
      ].map(([what, from, value], i) => ({
        what: what!,
        ...(from === undefined ? { noSide: true as const } : { from }),
        value: { kind: i % 2 === 0 ? ('given' as const) : ('measured' as const), words: [value!] },
      })),
    },
  ],
}

test.each(['Letter', 'A4', 'A5'] as const)(
  'on %s nothing of a card is cut short, and no words stand over others',
  paper => {
    for (const drawing of [
      ...cardPages([worded], layout(paper, 1), fonts),
      ...blankCardPages(1, layout(paper, 1), fonts),
    ]) {
      expect(textsOf(drawing).filter(text => text.includes('…'))).toEqual([])
      const { left, bottom, right, top } = boundsOfMarks(fonts, drawing.marks)
      expect(Math.min(left, bottom)).toBeGreaterThanOrEqual(0)
      expect(right).toBeLessThanOrEqual(drawing.bounds.right)
      expect(top).toBeLessThanOrEqual(drawing.bounds.top)
      const boxes = drawing.marks
        .filter(mark => mark.kind === 'text' && mark.words.join('') !== '')
        .map(mark => markBounds(fonts, mark))
      for (const [i, a] of boxes.entries())
        for (const b of boxes.slice(i + 1)) {
          const apart = a.right <= b.left || b.right <= a.left || a.top <= b.bottom || b.top <= a.bottom
          expect(apart).toBe(true)
        }
    }
  },
)

test('no letters of a card on A5 are smaller than the smallest of any other paper', () => {
  const heights = cardPages([worded], layout('A5', 1), fonts).flatMap(({ marks }) =>
    marks.flatMap(mark => (mark.kind === 'text' ? [mark.height] : [])),
  )
  expect(Math.min(...heights)).toBe(lettering.small)
})
