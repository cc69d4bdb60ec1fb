import type { Page } from '../drawing/page.ts'
import { type Finding, severities } from '../finding/finding.ts'
import { sentence } from '../finding/sentence.ts'
import type { LengthStyle } from '../length/precision.ts'
import { type LaidPages, type LayOptions, layOneEach, wholeBody } from '../paper/lay-out-pages.ts'
import { mapWidth, pageMapMarks } from '../paper/page-map.ts'
import { type CoverFacts, coverDrawings } from '../sheet/cover/cover.ts'
import type { Sheet, SheetContext } from '../sheet/sheet.ts'

/** What a cover tells of: the pages behind it, the sheets on them, and all that was found. */
export type Covered = {
  readonly laid: LaidPages
  readonly sheets: readonly Sheet[]
  readonly findings: readonly Finding[]
  readonly style: LengthStyle
}

/**
 * The pages of a cover for pages that are laid out already. How many it takes changes the numbers on it, which hardly
 * ever changes how many it takes; it is made again until both agree.
 */
export function layOutCover(
  covered: Covered,
  options: LayOptions,
  context: SheetContext,
): { readonly count: number; readonly pages: Iterable<Page> } {
  let count = 1
  let drawings = coverDrawings(context, factsOf(covered, count, options))
  for (let round = 0; drawings.length !== count && round < mostRounds; round++) {
    count = drawings.length
    drawings = coverDrawings(context, factsOf(covered, count, options))
  }
  const all = drawings.length + covered.laid.count
  return {
    count: drawings.length,
    pages: layOneEach(drawings, called, options, { before: 0, count: all }, context.fonts),
  }
}

const called = { label: 'cover', bookmark: 'Cover' }

/** Numbers of one more digit can move a line once; more often they cannot. */
const mostRounds = 3

function factsOf(
  { laid, sheets, findings, style }: Covered,
  before: number,
  options: LayOptions,
): CoverFacts {
  const captionOf = new Map(sheets.map(({ id, drawings }) => [id, drawings[0].caption]))
  return {
    ...wholeBody(options),
    pages: before + laid.count,
    pagesOf: partId =>
      sheets
        .filter(({ part }) => part === partId)
        .flatMap(({ id }) => laid.onPages.get(id) ?? [])
        .map(page => page + before),
    findings: severities.flatMap(severity =>
      findings
        .filter(finding => finding.severity === severity)
        .map(finding => ({ severity, words: sentence(finding, style) })),
    ),
    maps: laid.large.map(({ id, map }) => {
      const drawn = map(before)
      const { part = id, sheet = '', pieces } = captionOf.get(id) ?? {}
      return {
        part,
        sheet,
        ...(pieces === undefined ? {} : { pieces }),
        pages: drawn.cells.map(({ page }) => page),
        width: height => mapWidth(drawn, height),
        draw: into => pageMapMarks(drawn, into),
      }
    }),
  }
}
