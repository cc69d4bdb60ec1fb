import { fitText } from '../../drawing/fit-text.ts'
import { lettering } from '../../drawing/lettering.ts'
import { linesMark, pathMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import type { Fonts } from '../../text/fonts.ts'
import { measureLine } from '../../text/lay-out.ts'
import { plain, type Words } from '../../text/words.ts'
import type { Block, Entry } from './card.ts'
import { drawFields, inset, level, upright } from './draw-fields.ts'

const belongs = { layer: 'text', subject: 'card' } as const
/** High enough for a hand that writes 2 1/2 with a pencil. */
const entryHeight = 5.9
const headingHeight = 6.8
const namesHeight = 4

/** The columns, as parts of the width: what, from which side, as given, as measured, not given. */
const columns = [0.26, 0.185, 0.21, 0.21, 0.135] as const
const names = ['', 'from side', 'given', 'measured', 'not given'] as const

export function blockHeight({ entries }: Block): number {
  return headingHeight + entries.length * entryHeight
}

/** How many of the blocks, from the first on, fit one below the other into so much height. */
export function blocksThatFit(blocks: readonly Block[], height: number): number {
  let left = height - namesHeight
  const tooMany = blocks.findIndex(block => {
    left -= blockHeight(block)
    return left < 0
  })
  return tooMany < 0 ? blocks.length : tooMany
}

/** Blocks one below the other from the top of a column; those that do not fit are for the caller to keep away. */
export function valueTable(column: Bounds, blocks: readonly Block[], fonts: Fonts): readonly Mark[] {
  const edges = columnEdges(column)
  const marks: Mark[] = names.map((name, i) =>
    textMark(
      belongs,
      [fitText(fonts.regular, name, lettering.small, edges[i + 1]! - edges[i]! - inset / 2)],
      { x: edges[i]! + inset / 2, y: column.top - namesHeight + 0.9 },
      lettering.small,
    ),
  )
  let top = column.top - namesHeight
  for (const block of blocks) {
    const bottom = top - blockHeight(block)
    const heading = { ...column, top, bottom: top - headingHeight }
    marks.push(level(top, column, 'wide'), ...drawFields(heading, block.heading, fonts))
    block.entries.forEach((entry, i) => {
      const entryTop = heading.bottom - i * entryHeight
      const row = { ...column, top: entryTop, bottom: entryTop - entryHeight }
      marks.push(level(entryTop, column), ...entryMarks(row, edges, entry, fonts))
    })
    const body = { ...column, top: heading.bottom, bottom }
    marks.push(...edges.slice(1, -1).map(x => upright(x, body)))
    top = bottom
  }
  if (blocks.length > 0) {
    marks.push(
      pathMark(belongs, 'wide', [rectangle({ ...column, top: column.top - namesHeight, bottom: top }).outer]),
    )
  }
  return marks
}

function columnEdges({ left, right }: Bounds): readonly number[] {
  const edges = [left]
  for (const share of columns) edges.push(edges.at(-1)! + share * (right - left))
  return edges
}

function entryMarks(
  row: Bounds,
  edges: readonly number[],
  { what, from, noSide, value }: Entry,
  fonts: Fonts,
): readonly Mark[] {
  const write = (words: Words, column: number, height: number, weight: 'regular' | 'bold'): Mark => {
    const room = edges[column + 1]! - edges[column]! - 2 * inset
    const fits = measureLine(fonts[weight], words, height).width <= room
    const shown = fits ? words : [fitText(fonts[weight], plain(words), height, room)]
    const at = { x: edges[column]! + inset, y: row.bottom + (entryHeight - height) / 2 }
    return textMark(belongs, shown, at, height, { weight })
  }
  const marks = [write([what], 0, lettering.small, 'regular')]
  if (from !== undefined) marks.push(write([from], 1, lettering.small, 'bold'))
  if (noSide) marks.push(dash(row, edges))
  if (value.kind === 'given') marks.push(write(value.words, 2, lettering.medium, 'bold'))
  if (value.kind === 'measured') marks.push(write(value.words, 3, lettering.medium, 'bold'))
  return [...marks, ...tick(row, edges, value.kind === 'not-given')]
}

/** Nothing to be written here. */
function dash({ top, bottom }: Bounds, edges: readonly number[]): Mark {
  const middle = (edges[1]! + edges[2]!) / 2
  const y = (top + bottom) / 2
  return linesMark(belongs, 'thin', [
    [
      { x: middle - 1.5, y },
      { x: middle + 1.5, y },
    ],
  ])
}

/** A small box in the last column, crossed where the drawing was asked in vain. */
function tick({ top, bottom }: Bounds, edges: readonly number[], crossed: boolean): readonly Mark[] {
  const x = (edges[4]! + edges[5]!) / 2
  const y = (top + bottom) / 2
  const half = 1.6
  const box = { left: x - half, right: x + half, top: y + half, bottom: y - half }
  const frame = pathMark(belongs, 'thin', [rectangle(box).outer])
  if (!crossed) return [frame]
  const cross = linesMark(belongs, 'wide', [
    [
      { x: box.left, y: box.bottom },
      { x: box.right, y: box.top },
    ],
    [
      { x: box.left, y: box.top },
      { x: box.right, y: box.bottom },
    ],
  ])
  return [frame, cross]
}
