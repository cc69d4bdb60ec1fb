import type { Caption, Drawing } from '../../drawing/drawing.ts'
import { lettering } from '../../drawing/lettering.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import type { Severity } from '../../finding/finding.ts'
import type { SheetContext } from '../sheet.ts'
import { type Block, flow, inColumns, stacked } from './block.ts'
import { type DrawingOverPages, mapEntry } from './map-entry.ts'
import { partEntry } from './part-entry.ts'
import { wordsBlock } from './words-block.ts'

/** What a cover says besides what stands in the model; all of it is known only when the other pages are laid out. */
export type CoverFacts = {
  /** The free space of a page, in millimetres. */
  readonly width: number
  readonly height: number
  /** How many pages there are, the cover's own among them. */
  readonly pages: number
  readonly pagesOf: (partId: string) => readonly number[]
  /** In sentences, in the order in which they are to be read. */
  readonly findings: readonly { readonly severity: Severity; readonly words: string }[]
  /** Of each drawing that goes over several pages. */
  readonly maps: readonly DrawingOverPages[]
}

/** Two columns of parts want this width; on narrower paper there is one. */
const twoColumns = 165
const columnGap = 5
const aboveHeading = 2

/**
 * The first pages of a packet: what it holds, what is to be settled before anything is cut, a list of the parts with
 * reduced pictures, how large drawings lie on their pages, and the usual cautions. Long lists take several pages.
 */
export function coverDrawings(context: SheetContext, facts: CoverFacts): readonly Drawing[] {
  const { model, fonts } = context
  const { width, height } = facts
  const caption: Caption = { plan: model.title, sheet: 'cover' }
  const blocks = [
    ...titleBlocks(context, facts),
    ...findingBlocks(context, facts),
    ...partBlocks(context, facts),
    ...mapBlocks(context, facts),
    ...cautionBlocks(context, facts),
  ]
  return flow(blocks, height).map((page, i): Drawing => {
    const marks = stacked(page, { x: 0, y: 0 })
    const { bottom } = boundsOfMarks(fonts, marks)
    return {
      id: `cover-${i + 1}`,
      caption,
      marks,
      bounds: { left: 0, right: width, top: 0, bottom },
      keepWhole: [],
    }
  })
}

function titleBlocks({ model, fonts }: SheetContext, { width, pages }: CoverFacts): readonly Block[] {
  const pieces = model.parts.reduce((sum, part) => sum + part.pieces.length, 0)
  const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`
  const contents = `${counted(model.parts.length, 'part')}, ${counted(pieces, 'piece')}, ${counted(pages, 'page')}`
  return [
    wordsBlock(model.title, { height: lettering.title, width, weight: 'bold', below: 1 }, fonts),
    wordsBlock(contents, { height: lettering.medium, width, below: 2 }, fonts),
  ]
}

function heading(words: string, width: number, { fonts }: SheetContext): Block {
  const block = wordsBlock(words, { height: lettering.large, width, weight: 'bold', below: 1.5 }, fonts)
  return {
    height: block.height + aboveHeading,
    draw: ({ x, y }) => block.draw({ x, y: y - aboveHeading }),
    withNext: true,
  }
}

function findingBlocks(context: SheetContext, { width, findings }: CoverFacts): readonly Block[] {
  if (findings.length === 0) return []
  return [
    heading('Settle before anything is cut', width, context),
    ...findings.map(({ severity, words }, i) =>
      wordsBlock(
        severity === 'note' ? words : `${severity}: ${words}`,
        { height: lettering.medium, width, mark: '–', below: i === findings.length - 1 ? 2 : 0.6 },
        context.fonts,
      ),
    ),
  ]
}

function partBlocks(context: SheetContext, { width, pagesOf }: CoverFacts): readonly Block[] {
  const { model, fonts } = context
  if (model.parts.length === 0) return []
  const columns = width >= twoColumns ? 2 : 1
  const column = (width - (columns - 1) * columnGap) / columns
  const entries = model.parts.map(part => partEntry(part, pagesOf(part.id), column, model, fonts))
  return [
    heading('Parts (pictures are reduced: never measure or cut from them)', width, context),
    ...inColumns(entries, columns, column + columnGap),
  ]
}

function mapBlocks(context: SheetContext, { width, maps }: CoverFacts): readonly Block[] {
  if (maps.length === 0) return []
  const columns = width >= twoColumns ? 4 : 3
  const column = (width - (columns - 1) * columnGap) / columns
  const entries = maps.map(map => mapEntry(map, column, context.fonts))
  return [
    heading('Drawings over several pages', width, context),
    {
      ...wordsBlock(
        'Fold each page at its –··– line, lay it over the next one until the diamonds with the same letter are whole, and tape.',
        { height: lettering.medium, width, below: 2 },
        context.fonts,
      ),
      withNext: true,
    },
    ...inColumns(entries, columns, column + columnGap),
  ]
}

/** Short, where it matters, and never in place of the machine's manual, local rules or a teacher. Common practice, no source. */
const cautions = [
  'Print at 100 %, never “fit to page”. Lay a steel rule on both bars of every page before it is glued on.',
  'Protect eyes, ears and lungs. No loose sleeves, no gloves at a turning bit or blade. Unplug before a bit or blade is changed.',
  'Guards stay on; push blocks keep hands away. Clamp the work on the drill press. Cut small pieces by hand or from longer ones.',
  'What feels unsafe is done another way. The machine’s manual, local rules and qualified teaching come before anything on this paper.',
]

function cautionBlocks(context: SheetContext, { width }: CoverFacts): readonly Block[] {
  return [
    heading('Cautions', width, context),
    ...cautions.map(words =>
      wordsBlock(words, { height: lettering.medium, width, mark: '–', below: 0.6 }, context.fonts),
    ),
  ]
}
