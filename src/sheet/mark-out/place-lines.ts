import { fitText } from '../../drawing/fit-text.ts'
import { lettering } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { wrap } from '../../drawing/wrap.ts'
import { wrapWords } from '../../drawing/wrap-words.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { showLength } from '../../length/show-length.ts'
import type { Placed } from '../../model/feature.ts'
import type { Model, Part } from '../../model/part.ts'
import { shapeBounds } from '../../model/shape-bounds.ts'
import type { Fonts } from '../../text/fonts.ts'
import { measureLine, textWidth } from '../../text/lay-out.ts'
import { plain, type Words } from '../../text/words.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import { type EntryContext, entryWords, type SideName, setUpWords, sideNames } from '../key/key-words.ts'
import { linesOfSizes } from '../key/lines-of-sizes.ts'
import type { SheetContext } from '../sheet.ts'
import { type Axis, type Datum, datumOf } from './datum.ts'
import type { DimensionFacts } from './dimensions.ts'
import { entriesOn } from './entries-on.ts'
import type { View } from './view.ts'

/** A line of the table as its cells; `x` from its left edge, in millimetres. */
export type TableLine = {
  readonly height: number
  /** White over it, besides that between all lines, unless it is the first. */
  readonly above?: number
  readonly cells: readonly {
    readonly words: Words
    readonly x: number
    readonly bold?: boolean
    readonly height?: number
  }[]
}

const narrowestLetters = 8
const columnGap = 4
/** Names that are longer are cut short. */
const widestName = 34
const widestHeading = 44
/** White between lines, besides the room that tails and fractions take. */
const leading = 1.2
/** White over the heading of a face, so that it is not read with the sizes of the face before. */
const overHeading = 2

/**
 * Where everything stands that is cut into a face: a line for each letter, with its bit and depth, and below it how the
 * drill press is set for it where it leans, which cuts bear it and how far they are from the two edges that they are measured from: centres of holes, near sides of the rest.
 */
export function placeLines(
  view: View,
  title: string,
  key: readonly KeyEntry[],
  width: number,
  facts: DimensionFacts,
  { workshop, fonts }: SheetContext,
): readonly TableLine[] {
  const called = { name: sideNamesOf(facts.part), bits: workshop.bits }
  const [along, across] = [datumOf('x', view, facts.part), datumOf('y', view, facts.part)]
  const groups = entriesOn(view.own, key).map(entry => ({
    entry,
    rows: rowsOf(entry.members, along, across, facts),
  }))
  if (groups.length === 0) return []
  const rows = groups.flatMap(group => group.rows)
  const widthOf = (words: Words): number => measureLine(fonts.regular, words, lettering.large).width
  const headings = [`from the ${across.name}`, `from the ${along.name}`] as const
  const headingWidth = measureLine(fonts.regular, [headings[0]], lettering.medium).width
  const names = rows.map(({ name }) => fitText(fonts.regular, name, lettering.medium, widestName))
  const nameWidth = Math.max(...names.map(name => textWidth(fonts.regular, name, lettering.medium)))
  const letterWidth = (letter: string): number => textWidth(fonts.bold, letter, lettering.large)
  const letterColumn = Math.max(
    narrowestLetters,
    2 + Math.max(...groups.map(({ entry }) => letterWidth(entry.letter))),
  )
  const heading = fitText(fonts.bold, title, lettering.medium, widestHeading)
  const headingRoom = textWidth(fonts.bold, heading, lettering.medium)
  const second = Math.max(letterColumn + nameWidth, headingRoom) + columnGap
  const third = second + Math.max(headingWidth, ...rows.map(row => widthOf(row.across))) + columnGap
  const lines: TableLine[] = [
    {
      height: lettering.medium,
      above: overHeading,
      cells: [
        { words: [heading], x: 0, bold: true },
        { words: [headings[0]], x: second },
        { words: [headings[1]], x: third },
      ],
    },
  ]
  for (const { entry, rows: own } of groups) {
    lines.push(...entryLines(entry, letterColumn, width, called, facts.model, fonts))
    for (const row of own) {
      const name = fitText(fonts.regular, row.name, lettering.medium, widestName)
      linesOfSizes(row.along, Math.max(width - third, 1), widthOf).forEach((sizes, i) => {
        const first =
          i === 0
            ? [
                { words: [name], x: letterColumn, height: lettering.medium },
                { words: row.across, x: second },
              ]
            : []
        lines.push({ height: lettering.large, cells: [...first, { words: sizes, x: third }] })
      })
    }
  }
  return lines
}

/** A letter with what it stands for, and how the machine is set, broken where they are wider than the table. */
function entryLines(
  entry: KeyEntry,
  letterColumn: number,
  width: number,
  called: EntryContext,
  model: Model,
  fonts: Fonts,
): readonly TableLine[] {
  const room = Math.max(width - letterColumn, 1)
  const words = wrapWords(entryWords(entry, model, called), fonts.regular, lettering.large, room)
  const setUp = setUpWords(entry, called.name)
  const below = setUp === undefined ? [] : wrap(setUp, fonts.regular, lettering.medium, room)
  return [
    ...words.map((words, i): TableLine => {
      const letter = i === 0 ? [{ words: [entry.letter], x: 0, bold: true }] : []
      return { height: lettering.large, cells: [...letter, { words, x: letterColumn }] }
    }),
    ...below.map(
      (row): TableLine => ({ height: lettering.medium, cells: [{ words: [row], x: letterColumn }] }),
    ),
  ]
}

/** One sheet serves both hands: where there is a mirrored one, ends are called by what they are on either. */
function sideNamesOf(part: Part): SideName {
  const hand = part.pieces.some(piece => piece.hand === 'mirrored') ? 'mirrored' : 'drawn'
  return sideNames(hand, part)
}

type Row = { readonly name: string; readonly across: Words; readonly along: readonly Words[] }

/** A row for each name and distance across, as a gauge is set, with all the distances along that line. */
function rowsOf(
  members: readonly Placed[],
  along: Datum,
  across: Datum,
  { model, isScaled }: DimensionFacts,
): readonly Row[] {
  const show = (mm: number, { cut }: Placed, axis: Axis): Words =>
    showLength(
      mm,
      { unit: model.units, precision: model.precision },
      { unitMark: false, basis: isScaled(cut, axis) ? 'scaled' : 'derived' },
    )
  const rows = new Map<string, { name: string; across: Words; along: { mm: number; words: Words }[] }>()
  for (const feature of members) {
    const name = feature.row?.row ?? feature.id
    const aside = show(distance('y', feature, across), feature, 'y')
    const key = `${name}\n${plain(aside)}`
    const row = rows.get(key) ?? { name, across: aside, along: [] }
    const mm = distance('x', feature, along)
    row.along.push({ mm, words: show(mm, feature, 'x') })
    rows.set(key, row)
  }
  return [...rows.values()].map(row => ({
    ...row,
    along: row.along.sort((a, b) => a.mm - b.mm).map(({ words }) => words),
  }))
}

/** From a datum to a hole's centre, or to the nearer side of anything else. */
function distance(axis: Axis, { shape }: Placed, { at, inward }: Datum): number {
  if (shape.kind === 'bore') return (shape.centre[axis] - at) * inward
  const { left, right, bottom, top } = shapeBounds(shape)
  const [low, high] = axis === 'x' ? [left, right] : [bottom, top]
  return inward === 1 ? low - at : at - high
}

/** The lines as they hang from the upper left corner `at`, and their lower edge. */
export function hangLines(
  lines: readonly TableLine[],
  at: Point,
  fonts: Fonts,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const marks: Mark[] = []
  let y = at.y
  for (const [i, { cells, height, above = 0 }] of lines.entries()) {
    if (i > 0) y -= above
    const laid = cells.map(({ words, bold, height: own = height }) =>
      measureLine(fonts[bold === true ? 'bold' : 'regular'], words, own),
    )
    const base = y - Math.max(...laid.map(({ ascent }) => ascent))
    for (const { words, x, bold, height: own = height } of cells) {
      const weight = bold === true ? 'bold' : 'regular'
      marks.push(
        textMark({ layer: 'text', subject: 'places' }, words, { x: at.x + x, y: base }, own, { weight }),
      )
    }
    y = base - Math.max(...laid.map(({ descent }) => descent)) - leading
  }
  return { marks, bottom: y }
}
