import { lettering } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { wrap } from '../../drawing/wrap.ts'
import { wrapWords } from '../../drawing/wrap-words.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Fonts } from '../../text/fonts.ts'
import { measureLine, textWidth } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'
import { type Cell, type PlaceRow, placeLines } from './place-table.ts'

/** A line of the key: a letter, what it means, and below it in smaller letters how the machine is set and which cuts bear it; a remark; or where letters would stand that find no room. */
export type KeyLine =
  | {
      readonly kind: 'entry'
      readonly letter: string
      readonly words: Words
      readonly setUp?: string
      readonly names: string
    }
  | { readonly kind: 'size'; readonly words: Words }
  | { readonly kind: 'remark'; readonly text: string }
  | { readonly kind: 'places'; readonly rows: readonly PlaceRow[] }

const belongs = { layer: 'text', subject: 'key' } as const

type Hung = { readonly marks: readonly Mark[]; readonly bottom: number }

/**
 * The key as it hangs from its upper left corner `at`, no wider than `width` where words can be broken; many letters
 * stand in columns side by side where there is room. Returns its lower edge.
 */
export function keyTable(lines: readonly KeyLine[], at: Point, width: number, fonts: Fonts): Hung {
  const entries = lines.filter(line => line.kind === 'entry')
  const columns = columnsFor(entries, width, fonts)
  if (columns === 1) return column(lines, at, width, fonts)
  const columnWidth = (width - (columns - 1) * betweenColumns) / columns
  const each = Math.ceil(entries.length / columns)
  const hung = Array.from({ length: columns }, (_, i) => {
    const x = at.x + i * (columnWidth + betweenColumns)
    return column(entries.slice(i * each, (i + 1) * each), { x, y: at.y }, columnWidth, fonts)
  })
  const below = { x: at.x, y: Math.min(...hung.map(({ bottom }) => bottom)) }
  const others = column(
    lines.filter(line => line.kind !== 'entry'),
    below,
    width,
    fonts,
  )
  return { marks: [...hung, others].flatMap(({ marks }) => marks), bottom: others.bottom }
}

/** Fewer letters than these are read more easily one below the other. */
const fewestInColumns = 8
const betweenColumns = 6

/** How many columns the widest words leave room for. */
function columnsFor(entries: readonly KeyLine[], width: number, fonts: Fonts): number {
  if (entries.length < fewestInColumns) return 1
  const widest = Math.max(
    ...entries.map(line =>
      line.kind === 'entry' ? measureLine(fonts.regular, line.words, lettering.large).width : 0,
    ),
  )
  const wanted = widthOfLetters(entries, fonts) + widest + betweenColumns
  return Math.max(1, Math.floor((width + betweenColumns) / wanted))
}

function column(lines: readonly KeyLine[], at: Point, width: number, fonts: Fonts): Hung {
  const marks: Mark[] = []
  let y = at.y
  const letterColumn = widthOfLetters(lines, fonts)
  /** Writes what stands side by side below the last line. */
  const write = (cells: readonly Cell[], height: number): void => {
    const laid = cells.map(({ words }) => measureLine(fonts.regular, words, height))
    const base = y - Math.max(...laid.map(({ ascent }) => ascent))
    for (const { words, x, bold } of cells) {
      const weight = bold ? 'bold' : 'regular'
      marks.push(textMark(belongs, words, { x: at.x + x, y: base }, height, { weight }))
    }
    y = base - Math.max(...laid.map(({ descent }) => descent)) - leading
  }
  const writeWrapped = (text: string, x: number): void => {
    for (const row of wrap(text, fonts.regular, lettering.medium, width - x))
      write([{ words: [row], x }], lettering.medium)
  }
  for (const line of lines) {
    switch (line.kind) {
      case 'entry': {
        const room = width - letterColumn
        const letter: Cell = { words: [line.letter], x: 0, bold: true }
        wrapWords(line.words, fonts.regular, lettering.large, room).forEach((words, i) => {
          write([...(i === 0 ? [letter] : []), { words, x: letterColumn }], lettering.large)
        })
        if (line.setUp !== undefined) writeWrapped(line.setUp, letterColumn)
        writeWrapped(line.names, letterColumn)
        break
      }
      case 'size':
        write([{ words: line.words, x: 0 }], lettering.large)
        break
      case 'remark':
        writeWrapped(line.text, 0)
        break
      case 'places':
        for (const cells of placeLines(line.rows, width, fonts)) write(cells, lettering.medium)
        break
    }
    y -= leading
  }
  return { marks, bottom: y }
}

/** White between lines, besides the room that tails and fractions take. */
const leading = 0.8

/** The column that letters stand in: one or two of any breadth, and from there to their words. */
function widthOfLetters(lines: readonly KeyLine[], fonts: Fonts): number {
  const widths = lines.map(line =>
    line.kind === 'entry' ? textWidth(fonts.bold, line.letter, lettering.large) : 0,
  )
  return Math.max(narrowestLetters, Math.max(...widths) + 2)
}

/** Enough for most letters alone, so that most keys look alike. */
const narrowestLetters = 8
