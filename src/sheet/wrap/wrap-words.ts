import type { Part } from '../../model/part.ts'
import type { Words } from '../../text/words.ts'
import { entryLine } from '../key/entry-line.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import type { KeyLine } from '../key/key-table.ts'
import { sideNames } from '../key/key-words.ts'
import type { SheetContext } from '../sheet.ts'
import { sizeWords } from '../size-words.ts'
import { faceWords } from '../strip/border-words.ts'
import type { Unlettered } from '../template/letter-marks.ts'
import { pieceName, type Served } from '../template/pieces-served.ts'
import type { Panel } from './net.ts'
import type { ChosenWrap } from './which-wrap.ts'

/** What stands on a wrap, for the words beside it. */
export type Wrapped = {
  readonly panels: readonly Panel[]
  readonly nameless: readonly Panel[]
  /** A net that has no room for the name of its piece. */
  readonly unnamed: boolean
  readonly unlettered: readonly Unlettered[]
  /** Whether the paper is as large as the block was measured. */
  readonly measured: boolean
  readonly exits: boolean
  /** Holes that come out where there is no panel. */
  readonly elsewhere: readonly string[]
}

/** What the letters mean, how the paper goes on the wood, and what to mind. */
export function wrapKey(
  served: Served,
  { as, because }: ChosenWrap,
  key: readonly KeyEntry[],
  wrapped: Wrapped,
  { model, workshop }: SheetContext,
): readonly KeyLine[] {
  const { part, pieces } = served
  const { hand } = pieces[0]
  const name = (panel: Panel): string => faceWords(panel.face, part, hand)
  const remarks = [
    `A wrap since ${because}.`,
    ...(as === 'net' ? netWords(part, wrapped) : panelWords(wrapped)),
    ...(wrapped.exits ? ['Dashed ring: where a hole comes out. Bore from the other side, on scrap.'] : []),
    ...(wrapped.nameless.length > 0
      ? [
          `No room for the name of a panel: ${wrapped.nameless.map(name).join(', ')}. What lies at its borders tells it.`,
        ]
      : []),
    ...(wrapped.unnamed ? [`No room on the net for its name: write ${pieceName(served)} on it.`] : []),
    ...(wrapped.unlettered.length > 0
      ? [`No room for the letters of ${unletteredWords(wrapped.unlettered)}.`]
      : []),
    ...(wrapped.elsewhere.length > 0 ? [`Come out where no paper is: ${wrapped.elsewhere.join(', ')}.`] : []),
    'Bore before anything is cut away, the block flat and clamped; a hole that meets another is bored first, and slowly where they meet.',
  ]
  return [
    ...key.map(entry => entryLine(entry, model, { name: sideNames(hand, part), bits: workshop.bits })),
    { kind: 'size', words: measuredSize(part, wrapped.measured, model) },
    ...remarks.map((text): KeyLine => ({ kind: 'remark', text })),
  ]
}

function unletteredWords(unlettered: readonly Unlettered[]): string {
  return [
    ...new Set(unlettered.map(({ letter, feature }) => `${letter}: ${feature.row?.row ?? feature.id}`)),
  ].join(', ')
}

function measuredSize(part: Part, measured: boolean, model: SheetContext['model']): Words {
  const sizes = measured && part.measured !== undefined ? part.measured : part
  return [...sizeWords(sizes, model), ...(measured ? ['  as measured'] : [])]
}

function panelWords({ measured }: Wrapped): readonly string[] {
  return [
    `Each panel for itself: cut along its line, lay it on the face that it names, flush with the wood at the edges in bold type: face side, face edge and reference end. What is written along a border lies there; ${
      measured ? 'the other edges are as measured' : 'a block a little off size shows at the other edges'
    }.`,
  ]
}

function netWords(part: Part, { measured, panels }: Wrapped): readonly string[] {
  const apart = panels.filter(({ face, fold }) => face.id !== 'front' && fold === undefined)
  const size = measured
    ? 'It is as large as the block was measured; holes keep their distances from face side, face edge and reference end.'
    : part.measured === undefined
      ? 'It is as large as the plan has the block, and closes on no other: measure the block, and write measured: in the plan or use panels.'
      : 'The outline is as the plan has it.'
  return [
    `One net: cut along the thin line, fold back at –··–, lay the front on first, then fold round. ${size}`,
    ...(apart.length > 0 ? ['A panel that would lie over another stands apart.'] : []),
  ]
}
