import { lettering } from '../../drawing/lettering.ts'
import type { Fonts } from '../../text/fonts.ts'
import { measureLine } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'
import { linesOfSizes } from './lines-of-sizes.ts'

/** A letter that has no room on the part, and where it would stand: one distance from the face edge, and all those from the reference end on that line. */
export type PlaceRow = {
  readonly letter: string
  readonly faceEdge: Words
  readonly referenceEnd: readonly Words[]
}

/** Words, and how far from the left edge of the table they begin. */
export type Cell = { readonly words: Words; readonly x: number; readonly bold?: boolean }

/** Between two columns, and between two of the tables that stand side by side. */
const gap = 3
const betweenColumns = 8

/** As many rows as a page has room for beside a part. */
const mostRows = 60

/**
 * The lines of a numbered table of places, each as its cells, in columns side by side where there is room; of so many
 * rows only the first are listed, and how many are not.
 */
export function placeLines(
  rows: readonly PlaceRow[],
  width: number,
  fonts: Fonts,
): readonly (readonly Cell[])[] {
  const listed = rows.slice(0, mostRows)
  const starts = columnStarts(listed, fonts)
  const numbered = listed.map((row, i) => ({ row, number: i + 1 }))
  const wanted = starts.at(-1)! + widestOf(listed, fonts) + betweenColumns
  // side by side only where no row needs a second line for that
  const columns = Math.max(1, Math.floor((width + betweenColumns) / wanted))
  const each = Math.ceil(listed.length / columns)
  const sideBySide = Array.from({ length: Math.ceil(listed.length / each) }, (_, i) =>
    tableLines(numbered.slice(i * each, (i + 1) * each), starts, width, fonts).map(cells =>
      cells.map(cell => ({ ...cell, x: cell.x + i * wanted })),
    ),
  )
  const lines = sideBySide[0]!.map((_, k) => sideBySide.flatMap(column => column[k] ?? []))
  const more = rows.length - listed.length
  return more > 0 ? [...lines, [{ words: [`and ${more} more lines, not listed`], x: 0 }]] : lines
}

const headings: readonly Words[] = [['No.'], [''], ['face edge'], ['reference end']]

/** What stands in the first three columns of a row. */
function firstCells({ letter, faceEdge }: PlaceRow, number: number): readonly Words[] {
  return [[`${number}`], [letter], faceEdge]
}

/** How far from the left edge the columns begin, each wide enough for all that stands in it. */
function columnStarts(rows: readonly PlaceRow[], fonts: Fonts): readonly number[] {
  const cells = [headings, ...rows.map((row, i) => firstCells(row, i + 1))]
  const starts = [0]
  for (const column of [0, 1, 2]) {
    const widest = Math.max(
      ...cells.map(row => measureLine(fonts.bold, row[column]!, lettering.medium).width),
    )
    starts.push(starts[column]! + widest + gap)
  }
  return starts
}

/** How wide the last column is where every row is one line. */
function widestOf(rows: readonly PlaceRow[], fonts: Fonts): number {
  const widthOf = widthIn(fonts)
  const lines = rows.flatMap(row => linesOfSizes(row.referenceEnd, Infinity, widthOf))
  return Math.max(...[headings[3]!, ...lines].map(widthOf))
}

function widthIn(fonts: Fonts): (words: Words) => number {
  return words => measureLine(fonts.regular, words, lettering.medium).width
}

function tableLines(
  rows: readonly { readonly row: PlaceRow; readonly number: number }[],
  starts: readonly number[],
  width: number,
  fonts: Fonts,
): readonly (readonly Cell[])[] {
  const last = starts.at(-1)!
  const lines = rows.flatMap(({ row, number }) => {
    const [beginning = [], ...others] = linesOfSizes(row.referenceEnd, width - last, widthIn(fonts))
    return [
      [
        ...firstCells(row, number).map(
          (words, column): Cell => ({ words, x: starts[column]!, bold: column === 1 }),
        ),
        { words: beginning, x: last },
      ],
      ...others.map((words): Cell[] => [{ words, x: last }]),
    ]
  })
  return [
    headings.map((words, column) => ({ words, x: starts[column]! })).filter(({ words }) => words[0] !== ''),
    ...lines,
  ]
}
