import { fitText } from '../../drawing/fit-text.ts'
import { lettering } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark, Text } from '../../drawing/mark.ts'
import { moveMark } from '../../drawing/transform-mark.ts'
import { inOneLine, wrapWords } from '../../drawing/wrap-words.ts'
import type { Font } from '../../text/font.ts'
import type { Fonts } from '../../text/fonts.ts'
import { measureLine } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'
import type { FenceFrame } from './fence-frame.ts'

/** A line of words on the paper; one that is too long is broken between its clauses before it is broken within them. */
export type StripLine = { readonly clauses: readonly Words[]; readonly weight: 'regular' | 'bold' }

/**
 * How the words of a strip stand over its ruler: lines side by side along the wood, which keeps the paper low; or one
 * below another at the reference end, where seams between pages can leave them whole.
 */
export type Arrangement = 'rows' | 'column'

const white = 1.2
const betweenWords = 6
/** Lines stand side by side in this width, however short the wood is. */
const narrowestRow = 56
/**
 * A line up to this long is not broken for the sake of a short piece of wood: the usual ones are shorter. In a column none
 * is longer than a page of the smallest paper shows whole.
 */
const longestWhole = { rows: 150, column: 110 } as const

/** The words over the ruler: how high they stand, how far from the reference end they reach, and they from a height up. */
export type WordsOver = {
  readonly height: number
  readonly width: number
  readonly marksFrom: (y: number) => readonly Mark[]
}

export function wordsOver(
  lines: readonly StripLine[],
  { length, toward }: Pick<FenceFrame, 'length' | 'toward'>,
  arrangement: Arrangement,
  fonts: Fonts,
): WordsOver {
  const inRows = arrangement === 'rows'
  const widths = lines.map(({ clauses, weight }) => widthOf(inOneLine(clauses), fonts[weight]))
  const column = Math.max(length, narrowestRow, ...widths.filter(width => width <= longestWhole[arrangement]))
  const longest = inRows ? column : Math.min(column, longestWhole.column)
  const room = inRows ? Math.max(length, narrowestRow) : 0
  const rows: Row[] = []
  for (const { clauses, weight } of lines) {
    const parts = brokenLine(clauses, fonts[weight], longest).map(words => ({
      words,
      weight,
      ...measureLine(fonts[weight], words, lettering.large),
    }))
    const [part] = parts
    const row = rows.at(-1)
    // what is broken stands by itself, so that its lines are read one after another
    if (row?.open && parts.length === 1 && row.width + betweenWords + part!.width <= room) {
      row.parts.push(part!)
      row.width += betweenWords + part!.width
    } else rows.push(...parts.map(one => ({ parts: [one], width: one.width, open: parts.length === 1 })))
  }
  const widest = Math.max(...rows.map(({ width }) => width)) + white
  const left = toward === 1 ? white : -Math.max(room, widest)
  const belongs = { layer: 'text', subject: 'strip' } as const
  const placed: Mark[] = []
  let y = 0
  // read from the top down, so the last row stands lowest
  for (const { parts } of rows.toReversed()) {
    const descent = Math.max(...parts.map(part => part.descent))
    let x = left
    for (const { words, weight, width } of parts) {
      placed.push(textMark(belongs, words, { x, y: y + descent }, lettering.large, { weight }))
      x += width + betweenWords
    }
    y += descent + Math.max(...parts.map(part => part.ascent)) + white
  }
  const marksFrom = (from: number): readonly Mark[] => placed.map(mark => moveMark(mark, 0, from))
  return { height: y - white, width: widest, marksFrom }
}

type Row = {
  readonly parts: (Pick<Text, 'words' | 'weight'> & ReturnType<typeof measureLine>)[]
  width: number
  /** Whether others may stand beside what is in it. */
  readonly open: boolean
}

/** A line whole where it is no longer than `longest` millimetres, else in as many as it takes; a single word that is longer is cut short. */
function brokenLine(clauses: readonly Words[], font: Font, longest: number): readonly Words[] {
  const whole = inOneLine(clauses)
  if (widthOf(whole, font) <= longest) return [whole]
  return clauses
    .flatMap(words => wrapWords(words, font, lettering.large, longest))
    .map(line =>
      line.every(word => typeof word === 'string')
        ? [fitText(font, line.join(''), lettering.large, longest)]
        : line,
    )
}

function widthOf(words: Words, font: Font): number {
  return measureLine(font, words, lettering.large).width
}
