import { angleText } from '../../length/show-angle.ts'
import { showLength } from '../../length/show-length.ts'
import { tableTilt } from '../../model/bore/lean.ts'
import type { Bore } from '../../model/feature.ts'
import type { Piece } from '../../model/part.ts'
import { plain, type Words } from '../../text/words.ts'
import { entryLine } from '../key/entry-line.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import type { KeyLine } from '../key/key-table.ts'
import { entryWords, sideNames } from '../key/key-words.ts'
import type { SheetContext } from '../sheet.ts'
import { showSize } from '../show-size.ts'
import { borderWords, faceWords } from './border-words.ts'
import type { Strip } from './strips-of.ts'
import type { StripLine } from './words-over.ts'

/** What a strip is for: the names of its rows and holes. */
export function stripNames({ setting }: Pick<Strip, 'setting'>): string {
  const names = setting.faces.flatMap(({ holes }) => holes.map(({ feature: { id, row } }) => row?.row ?? id))
  return [...new Set(names)].join(', ')
}

/** What stands on the paper over each face: which strip it is, the bit and its depth, and where the fence is. */
export function linesOnStrip(
  strip: Strip,
  face: number,
  name: string,
  key: readonly KeyEntry[],
  { model, workshop }: SheetContext,
): readonly StripLine[] {
  const { setting, served, hand } = strip
  const { frame, holes } = setting.faces[face]!
  const { part } = served
  const here = key.filter(({ members }) => holes.some(({ feature }) => members.includes(feature)))
  const up = `${faceWords(frame.face, part, hand)} up`
  const regular = (words: Words): StripLine => ({ clauses: [words], weight: 'regular' })
  return [
    { clauses: [[`${name} ·`], [up]], weight: 'bold' },
    ...here.map(entry =>
      regular([
        ...(key.length > 1 ? [`${entry.letter}: `] : []),
        ...entryWords(entry, model, { name: sideNames(hand, part), bits: workshop.bits }),
      ]),
    ),
    regular([
      'fence ',
      ...showSize({ mm: setting.fence, basis: 'derived' }, model),
      ` from the ${borderWords(frame.fence, part, hand)}`,
    ]),
  ]
}

/** The words beside a strip: how it is used, which way the pieces lie, and what the letters mean. */
export function stripKey(
  strip: Strip,
  key: readonly KeyEntry[],
  every: number,
  context: SheetContext,
): readonly KeyLine[] {
  const { setting, served, hand, turned } = strip
  const { part } = served
  const [first] = setting.faces
  const fence = borderWords(first.frame.fence, part, hand)
  const distance = plain(showSize({ mm: setting.fence, basis: 'derived' }, context.model))
  const both = setting.faces.length > 1
  const remarks = [
    reason(strip),
    both
      ? `Cut out at the dotted line and fold at –··–. Lay the half that names an end on that end, with the fold on the ${fence}: one setting of the fence does both ends.`
      : `Cut out at the dotted line, fold at –··– over the ${fence} and over the ${borderWords(first.frame.reference, part, hand)}.`,
    `Set the fence ${distance} from the middle of the bit, the ${fence} against it. The crosses are a check for the bit before it is switched on; do not prick them. Dashed: the far edge of the wood.`,
    ...tilting(first.holes[0].bore),
    ...turning(strip),
    ...(turned === undefined ? [] : [turnedOver(strip, turned)]),
    ...(every > 1
      ? [
          `No room for every distance: over every ${ordinal(every)} hole and the last. All of them, from the ${borderWords(first.frame.reference, part, hand)}:`,
        ]
      : []),
  ]
  return [
    ...(key.length > 1
      ? key.map(entry =>
          entryLine(entry, context.model, { name: sideNames(hand, part), bits: context.workshop.bits }),
        )
      : []),
    ...remarks.map((text): KeyLine => ({ kind: 'remark', text })),
    ...(every > 1 ? distances(strip, context) : []),
    { kind: 'remark', text: cautions(setting) },
  ]
}

/** Why there is a strip, in half a line. */
function reason({ setting, asked }: Strip): string {
  const count = setting.faces.reduce((sum, { holes }) => sum + holes.length, 0)
  if (asked) return 'A strip since you asked for one.'
  return setting.faces.length > 1
    ? `A strip since ${count} holes on the two ends are bored with one setting of the fence.`
    : `A strip since ${count} holes in line are bored with one setting of the fence.`
}

/** How table and fence stand for leaning holes: the table tilts along the sight line, square to its hinge. */
function tilting(bore: Bore): readonly string[] {
  const { lean } = bore
  if (lean === undefined) return []
  const toFence = Math.abs(Math.atan(Math.tan(lean.toward)))
  return [
    `The arrow is the sight line, the way that a rod in the hole leans. Tilt the table ${angleText(tableTilt(bore))} with its hinge square to the arrow, so that the fence stands at ${angleText(toFence)} to the arrow; set the fence after the tilt, to the cross.`,
  ]
}

/** How the pieces of the other hand are bored with the same fence. */
function turning({ hand, alone }: Strip): readonly string[] {
  if (alone || hand !== 'mirrored') return []
  return [
    'For the mirrored pieces, whose reference end lies the other way: the same face up and the same edge against the fence as for the others; the stop goes to the other end.',
  ]
}

/** One strip does both hands where the bit goes right through. */
function turnedOver({ setting, served: { part } }: Strip, pieces: readonly Piece[]): string {
  const [{ frame }] = setting.faces
  const names = piecesWords(pieces)
  return `The holes go through, so one setting does both hands. ${names}, mirrored: turn over, the ${faceWords(
    frame.face,
    part,
    'mirrored',
  )} down, so that the same edge meets the fence; the stop stays. The bit comes out on the ${faceWords(frame.face, part, 'mirrored')}: clamp scrap under it.`
}

function piecesWords(pieces: readonly Piece[]): string {
  const [first, last] = [pieces[0]!.number, pieces.at(-1)!.number]
  return first === last ? `Piece ${first}` : `Pieces ${first}–${last}`
}

function ordinal(n: number): string {
  return n === 2 ? 'second' : n === 3 ? 'third' : `${n}th`
}

/** So many distances are found again quickly. */
const inOneLine = 10

/** All distances of a row that has no room for them over its holes. */
function distances({ setting }: Strip, { model }: SheetContext): readonly KeyLine[] {
  const style = { unit: model.units, precision: model.precision }
  return setting.faces.flatMap(({ holes }) =>
    Array.from({ length: Math.ceil(holes.length / inOneLine) }, (_, i): KeyLine => {
      const some = holes.slice(i * inOneLine, (i + 1) * inOneLine)
      const shown = some.map(({ distance }) => plain(showLength(distance, style, { unitMark: false })))
      return {
        kind: 'remark',
        text: `${i * inOneLine + 1}–${i * inOneLine + some.length}:  ${shown.join(',  ')}`,
      }
    }),
  )
}

/** Common practice, no source. */
function cautions({ faces }: Strip['setting']): string {
  const through = faces.some(({ holes }) => holes.some(({ feature }) => feature.shape.depth === 'through'))
  return `Hold the piece against fence and stop with a clamp, not with fingers near the bit${
    through ? '; scrap wood under it where the bit comes out' : ''
  }. Chips out of the corner of the fence before each hole.`
}
