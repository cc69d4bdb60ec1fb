import type { Caption } from '../drawing/drawing.ts'
import { fitText } from '../drawing/fit-text.ts'
import { lettering } from '../drawing/lettering.ts'
import { lineStyles } from '../drawing/line-role.ts'
import { linesMark, textMark } from '../drawing/make-mark.ts'
import type { Mark } from '../drawing/mark.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Unit } from '../length/unit.ts'
import type { Fonts } from '../text/fonts.ts'
import { textWidth } from '../text/lay-out.ts'
import type { Frame } from './frame.ts'
import { mapWidth, type PageMap, pageMapMarks } from './page-map.ts'
import { scaleBar, scaleBarReach } from './scale-bar.ts'

/** What the furniture of a page has to say. */
export type PageFacts = {
  /** Those of the sheets on the page, in their order. */
  readonly captions: readonly Caption[]
  readonly number: number
  readonly count: number
  /** The printer that the page is corrected for. */
  readonly printer?: string
  /** Of a page that shows a part of a drawing. */
  readonly tile?: TileFacts
}

/** Where a tile belongs, and how it is joined to the others, the longest words first. */
export type TileFacts = { readonly map: PageMap; readonly joining: readonly string[] }

const text = { layer: 'paper', subject: 'page' } as const

/** What to do with the bars, the longest words that fit. */
const measure = [
  'Print at 100 %, never “fit to page”. Lay a steel rule on both bars before anything is glued on.',
  'Print at 100 %. Lay a steel rule on both bars first.',
  'Lay a steel rule on both bars first.',
]

/** Kept short, where it matters, and never in place of the machine's manual or a teacher. Common practice, no source. */
const cautions = [
  'Eyes, ears and lungs protected; work clamped; unplug before changing a bit or blade. The machine’s manual, local rules and qualified teaching come first.',
  'Protect eyes, ears, lungs; clamp the work. Machine’s manual, local rules and teaching come first.',
  'The machine’s manual, local rules and teaching come first.',
]

/**
 * What every page carries: what it belongs to, which page it is, and the two bars that prove its scale. The bars have
 * hundreds of ticks and are the same on every page of a frame, so they are drawn once.
 */
export function furniture(frame: Frame, units: Unit, fonts: Fonts): (facts: PageFacts) => readonly Mark[] {
  const same = [...foot(frame, units, fonts), ...side(frame, units)]
  return facts => [...pageHead(frame, facts, fonts), ...same]
}

/** The strip at the top of a page: what it belongs to, which page it is, and where a tile lies. */
export function pageHead(
  { head: box }: Pick<Frame, 'head'>,
  facts: PageFacts,
  fonts: Fonts,
): readonly Mark[] {
  const { number, count, printer, tile } = facts
  const { title, below } = headWords(facts.captions)
  const first = box.top - lettering.large - 0.5
  const second = first - lettering.medium - 2.2
  const third = second - lettering.medium - 2.2
  const rule = box.bottom
  // the ink of the line's ends stays within the strip too
  const half = lineStyles.thin.width / 2
  const widthOf = (words: string, height: number): number => textWidth(fonts.regular, words, height)
  const map = tile && {
    ...tile,
    box: mapBox(
      tile.map,
      box,
      tile.joining.map(words => widthOf(words, lettering.small)),
    ),
  }
  // the right column keeps its own width; the left one takes what is left
  const room = (map?.box.left ?? box.right - rightColumn) - box.left - (map ? mapAside : 0)
  const left = (words: string, height: number, y: number, weight: 'regular' | 'bold' = 'regular'): Mark =>
    textMark(text, [fitText(fonts[weight], words, height, room)], { x: box.left, y }, height, { weight })
  // told in full, if need be in small letters, before it is told in short
  const joined = (choices: readonly string[]): readonly Mark[] => {
    const ways = choices.flatMap(words =>
      [lettering.medium, lettering.small].map(height => ({ words, height })),
    )
    const way = ways.find(({ words, height }) => widthOf(words, height) <= room) ?? ways.at(-1)
    return way === undefined ? [] : [left(way.words, way.height, third)]
  }
  const right = (words: string, height: number, y: number): Mark =>
    textMark(
      text,
      [fitText(fonts.regular, words, height, rightColumn - mapAside)],
      { x: box.right, y },
      height,
      { align: 'end' },
    )
  return [
    left(title, lettering.large, first, 'bold'),
    left(below, lettering.medium, second),
    ...(map === undefined ? [] : joined(map.joining)),
    right(`page ${number} of ${count}`, lettering.large, first),
    right('print at 100 %', lettering.medium, second),
    ...(printer === undefined
      ? []
      : [right(`on ${printer}`, lettering.small, second - lettering.small - 1.3)]),
    ...(map === undefined ? [] : pageMapMarks(map.map, map.box, number)),
    linesMark(text, 'thin', [
      [
        { x: box.left + half, y: rule },
        { x: box.right - half, y: rule },
      ],
    ]),
  ]
}

/** One sheet is named in full; of several, the parts that they belong to. */
function headWords(captions: readonly Caption[]): { readonly title: string; readonly below: string } {
  const distinct = (words: readonly (string | undefined)[]): readonly string[] =>
    [...new Set(words.filter(word => word !== undefined && word !== ''))] as readonly string[]
  const plans = distinct(captions.map(({ plan }) => plan))
  const parts = distinct(captions.map(({ part }) => part))
  const pieces = distinct(captions.map(({ pieces }) => pieces))
  // which pieces these are is said where there is one part and one sheet of it
  const named = parts.length === 1 && pieces.length === 1 ? [`${parts[0]} · ${pieces[0]}`] : parts
  return {
    title: named.length === 0 ? plans.join(', ') : named.join(', '),
    // a sheet about the whole plan has the plan as its title already
    below: [...(named.length === 0 ? [] : plans), ...distinct(captions.map(({ sheet }) => sheet))].join(
      ' · ',
    ),
  }
}

/** The map stands between the two columns of the head, as high as that is. It gives way to words that are so wide, the first that leave it room. */
function mapBox(map: PageMap, head: Bounds, words: readonly number[]): Bounds {
  const right = head.right - rightColumn
  const [top, bottom] = [head.top, head.bottom + mapAside]
  const room = right - head.left
  const left = words.map(width => room - besideWords - width).find(most => most >= narrowestMap)
  const most = Math.min(mostMapShare * room, left ?? narrowestMap)
  const widest = Math.min(most, mapWidth(map, top - bottom))
  return { left: right - widest, right, top, bottom }
}

/** White between the map and the words beside it, and the line below. */
const mapAside = 2
/** What the map may take of the room that it shares with the words. */
const mostMapShare = 0.4
/** White between the map and the words that it gives way to, a hair more than is asked for, so that rounding cannot cut them. */
const besideWords = mapAside + 0.1
/** A narrower map has no room for the numbers of two pages side by side. */
const narrowestMap = 14

/** Room for "page 100 of 100" in large letters. */
const rightColumn = 46

function foot({ foot: box }: Frame, units: Unit, fonts: Fonts): readonly Mark[] {
  const last = box.bottom + 0.8
  const first = last + lettering.small + 1.7
  const bar = box.top - scaleBarReach
  const room = box.right - box.left
  const line = (choices: readonly string[], height: number, y: number): Mark => {
    const fits = choices.find(words => textWidth(fonts.regular, words, height) <= room)
    const words = fits ?? fitText(fonts.regular, choices.at(-1)!, height, room)
    return textMark(text, [words], { x: box.left, y }, height)
  }
  return [
    ...scaleBar(
      { direction: 'across', from: { x: box.left + barInset, y: bar }, length: room - barInset - barTail },
      units,
    ),
    line(measure, lettering.medium, first),
    line(cautions, lettering.small, last),
  ]
}

function side({ side: box }: Frame, units: Unit): readonly Mark[] {
  const from = { x: box.left + scaleBarReach, y: box.bottom + barInset }
  return scaleBar({ direction: 'along', from, length: box.top - box.bottom - barInset - barTail }, units)
}

/** White before a bar begins, so that its end mark stands free. */
const barInset = 1
/** Room for the name of the unit, which stands behind the bar's end. */
const barTail = 10
