import { lettering } from '../../drawing/lettering.ts'
import type { Fonts } from '../../text/fonts.ts'
import { layOut } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'

/** A letter that has no room on the part, and where it would stand: one distance from the face edge, and all those from the reference end on that line. */
export type PlaceRow = {
  readonly letter: string
  readonly faceEdge: Words
  readonly referenceEnd: readonly Words[]
}

/** Words, and how far from the left edge of the table they begin. */
export type Cell = { readonly words: Words; readonly x: number; readonly bold?: boolean }

/** Between two columns. */
const gap = 3

/** As many rows as a page has room for beside a part. */
const mostRows = 60

/** The lines of a numbered table of places, each as its cells; of so many rows only the first are listed, and how many are not. */
export function placeLines(
  rows: readonly PlaceRow[],
  width: number,
  fonts: Fonts,
): readonly (readonly Cell[])[] {
  const widthOf = (words: Words): number => layOut(fonts.bold, words, lettering.medium).width
  const headings: readonly Words[] = [['No.'], [''], ['face edge'], ['reference end']]
  const listed = rows.slice(0, mostRows).map(({ letter, faceEdge, referenceEnd }, i) => ({
    first: [[`${i + 1}`], [letter], faceEdge] as const,
    referenceEnd,
  }))
  const starts = [0]
  for (const column of [0, 1, 2]) {
    const words = [headings[column]!, ...listed.map(({ first }) => first[column]!)]
    starts.push(starts[column]! + Math.max(...words.map(widthOf)) + gap)
  }
  const last = starts[3]!
  const lines = listed.flatMap(({ first, referenceEnd }) => {
    const [beginning = [], ...others] = inLines(referenceEnd, width - last, fonts)
    return [
      [
        ...first.map((words, column): Cell => ({ words, x: starts[column]!, bold: column === 1 })),
        { words: beginning, x: last },
      ],
      ...others.map((words): Cell[] => [{ words, x: last }]),
    ]
  })
  const more = rows.length - listed.length
  return [
    headings.map((words, column) => ({ words, x: starts[column]! })).filter(({ words }) => words[0] !== ''),
    ...lines,
    ...(more > 0 ? [[{ words: [`and ${more} more lines, not listed`], x: 0 }]] : []),
  ]
}

/** Sizes one after another, broken between them into lines no wider than `width` unless one size alone is. */
function inLines(sizes: readonly Words[], width: number, fonts: Fonts): readonly Words[] {
  const lines: Words[] = []
  for (const size of sizes) {
    const before = lines.at(-1)
    const longer = before === undefined ? size : [...before, ',  ', ...size]
    const fits = layOut(fonts.regular, longer, lettering.medium).width <= width
    if (before !== undefined && fits) lines[lines.length - 1] = longer
    else lines.push(size)
  }
  return lines
}
