import { lettering } from '../../drawing/lettering.ts'
import { linesMark, pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import type { Fonts, Weight } from '../../text/fonts.ts'
import type { Words } from '../../text/words.ts'
import type { Block, Entry } from './card.ts'
import { drawFields, level, upright } from './draw-fields.ts'
import { downToLast, type Fitted, fittedMarks, fitWords } from './fit-words.ts'
import { inset, layOutFields } from './lay-out-fields.ts'
import { type Share, shareWidth } from './share-width.ts'

const belongs = { layer: 'text', subject: 'card' } as const
/** High enough for a hand that writes 2 1/2 with a pencil. */
const entryHeight = 5.9
const leastHeading = 6.8
const namesHeight = 4

/**
 * The columns: what, from which side, as given, as measured, not given. The least that they want, with white on either
 * side, is what "bottom right" does in small letters, "bottom", "through", "measured", and "given".
 */
const columns: readonly Share[] = [
  { share: 0.26, least: 16.4 },
  { share: 0.185, least: 10.7 },
  { share: 0.21, least: 11.4 },
  { share: 0.21, least: 12.2 },
  { share: 0.135, least: 6.8 },
]
const names = ['', 'from side', 'given', 'measured', 'not given'] as const

function headingHeight({ heading }: Block, { left, right }: Bounds, fonts: Fonts): number {
  return leastHeading + layOutFields(heading, right - left, fonts).more
}

function blockHeight(block: Block, column: Bounds, fonts: Fonts): number {
  return headingHeight(block, column, fonts) + block.entries.length * entryHeight
}

/** The names of the columns as they stand over these, and how high. */
function namesOver(
  column: Bounds,
  fonts: Fonts,
): { readonly names: readonly Fitted[]; readonly height: number } {
  const edges = columnEdges(column)
  const fitted = names.map((name, i) => {
    const width = edges[i + 1]! - edges[i]! - inset / 2
    return fitWords([name], { height: lettering.small, width, most: 2 }, fonts)
  })
  return { names: fitted, height: namesHeight + Math.max(...fitted.map(downToLast)) }
}

/** How many of the blocks, from the first on, fit one below the other into a column. */
export function blocksThatFit(blocks: readonly Block[], column: Bounds, fonts: Fonts): number {
  let left = column.top - column.bottom - namesOver(column, fonts).height
  const tooMany = blocks.findIndex(block => {
    left -= blockHeight(block, column, fonts)
    return left < 0
  })
  return tooMany < 0 ? blocks.length : tooMany
}

/** Blocks one below the other from the top of a column; those that do not fit are for the caller to keep away. */
export function valueTable(column: Bounds, blocks: readonly Block[], fonts: Fonts): readonly Mark[] {
  const edges = columnEdges(column)
  const over = namesOver(column, fonts)
  const first = column.top - over.height
  const marks: Mark[] = over.names.flatMap((name, i) =>
    fittedMarks(name, { x: edges[i]! + inset / 2, y: first + 0.9 }, belongs),
  )
  let top = first
  for (const block of blocks) {
    const bottom = top - blockHeight(block, column, fonts)
    const heading = { ...column, top, bottom: top - headingHeight(block, column, fonts) }
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
    marks.push(pathMark(belongs, 'wide', [rectangle({ ...column, top: first, bottom: top }).outer]))
  }
  return marks
}

function columnEdges({ left, right }: Bounds): readonly number[] {
  const edges = [left]
  for (const width of shareWidth(right - left, columns)) edges.push(edges.at(-1)! + width)
  return edges
}

function entryMarks(
  row: Bounds,
  edges: readonly number[],
  { what, from, noSide, value }: Entry,
  fonts: Fonts,
): readonly Mark[] {
  const write = (words: Words, column: number, height: number, weight: Weight): readonly Mark[] => {
    const width = edges[column + 1]! - edges[column]! - 2 * inset
    const shown = fitWords(words, { height, width, most: 2, weight }, fonts)
    const last = row.bottom + (entryHeight - shown.height - downToLast(shown)) / 2
    return fittedMarks(shown, { x: edges[column]! + inset, y: last }, belongs)
  }
  const marks = [...write([what], 0, lettering.small, 'regular')]
  if (from !== undefined) marks.push(...write([from], 1, lettering.small, 'bold'))
  if (noSide) marks.push(dash(row, edges))
  if (value.kind === 'given') marks.push(...write(value.words, 2, lettering.medium, 'bold'))
  if (value.kind === 'measured') marks.push(...write(value.words, 3, lettering.medium, 'bold'))
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
