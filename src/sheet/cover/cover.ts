import type { Caption, Drawing } from '../../drawing/drawing.ts'
import { lettering } from '../../drawing/lettering.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import type { Severity } from '../../finding/finding.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { SheetContext } from '../sheet.ts'
import { type Block, flow, sideBySide, stacked } from './block.ts'
import { pageList } from './page-list.ts'
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
  readonly maps: readonly {
    readonly part: string
    readonly pages: readonly number[]
    /** Width over height. */
    readonly shape: number
    readonly draw: (into: Bounds) => readonly Mark[]
  }[]
}

/** Two columns of parts want this width; on narrower paper there is one. */
const twoColumns = 165
const columnGap = 5
const mapHeight = 28

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
    wordsBlock(contents, { height: lettering.medium, width, below: 4 }, fonts),
  ]
}

function heading(words: string, width: number, { fonts }: SheetContext): Block {
  return {
    ...wordsBlock(words, { height: lettering.large, width, weight: 'bold', below: 1.5 }, fonts),
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
        { height: lettering.medium, width, mark: '–', below: i === findings.length - 1 ? 4 : 0.6 },
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
  const rows = Array.from({ length: Math.ceil(entries.length / columns) }, (_, i) =>
    sideBySide(entries.slice(i * columns, (i + 1) * columns), column + columnGap),
  )
  return [heading('Parts (pictures are reduced: never measure or cut from them)', width, context), ...rows]
}

function mapBlocks(context: SheetContext, { width, maps }: CoverFacts): readonly Block[] {
  if (maps.length === 0) return []
  const { fonts } = context
  return [
    heading('Drawings over several pages', width, context),
    ...maps.map(({ part, pages, shape, draw }): Block => {
      const words = wordsBlock(
        `${part}: ${pageList(pages)}. Fold each page at its –··– line, lay it over the next one until the diamonds with the same letter are whole, and tape.`,
        { height: lettering.medium, width: width / 2 - columnGap, below: 3 },
        fonts,
      )
      const mapWidth = Math.min(width / 2, mapHeight * shape)
      return {
        height: Math.max(words.height, mapHeight + 4),
        draw: ({ x, y }) => [
          ...words.draw({ x, y }),
          ...draw({ left: x + width - mapWidth, right: x + width, top: y, bottom: y - mapHeight }),
        ],
      }
    }),
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
