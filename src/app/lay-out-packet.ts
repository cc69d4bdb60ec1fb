import type { Packet, Page, Paper } from '../drawing/page.ts'
import type { Finding, FindingOf } from '../finding/finding.ts'
import type { LengthStyle } from '../length/precision.ts'
import type { Model, Part } from '../model/part.ts'
import type { Misfit } from '../paper/fill-pages.ts'
import { layOutPages } from '../paper/lay-out-pages.ts'
import type { SheetToLay } from '../paper/sheet-to-lay.ts'
import { makeSheets, shapesFor } from '../sheet/registry.ts'
import type { Sheet } from '../sheet/sheet.ts'
import type { Fonts } from '../text/fonts.ts'
import { defaultWorkshop } from '../workshop/defaults.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { choosePage } from './choose-page.ts'
import { chooseParts } from './choose-parts.ts'
import { chooseSheets } from './choose-sheets.ts'
import { chooseStrip, noEdgeForStrip } from './choose-strip.ts'
import { errorsByPart } from './errors-by-part.ts'
import type { Choices } from './inputs.ts'
import { layOutCover } from './lay-out-cover.ts'
import { seamFindings } from './seam-findings.ts'

export type LaidPacket = {
  readonly packet: Packet
  readonly count: number
  /** No packing has fewer pages than this, by the areas of what is on them. */
  readonly areaBound: number
  readonly sheets: readonly Sheet[]
  /** Of every part whose shape is on the paper, template or not: what machines cut by. */
  readonly shapes: () => readonly Sheet[]
  readonly findings: readonly Finding[]
}

/** What stands before anything is drawn: the shop, and for the cover what was found and how it shows lengths. */
export type Before = {
  readonly findings: readonly Finding[]
  readonly style: LengthStyle
  readonly workshop: Workshop
}

/**
 * Draws the sheets that are wanted and lays them on pages, behind a cover that says what is on them and what was
 * found. What cannot be meant (a part that the plan does not have, a paper that does not exist) is said, and then
 * nothing is laid out.
 */
export function layOutPacket(
  model: Model,
  choices: Choices,
  fonts: Fonts,
  date: Date | undefined,
  before: Before = {
    findings: [],
    style: { unit: model.units, precision: model.precision },
    workshop: defaultWorkshop,
  },
): LaidPacket {
  const strip = choices.strip === undefined ? undefined : chooseStrip(model, choices.strip)
  const { parts, findings: unknownParts } =
    strip === undefined ? chooseParts(model, choices.parts) : partOf(strip)
  const chosen = choosePage(choices, model.units, before.workshop)
  const kinds = chooseSheets(strip === undefined ? choices.sheets : ['strip'])
  const about = { title: model.title, language: 'en', ...(date === undefined ? {} : { date }) }
  const unusable = [...unknownParts, ...('findings' in chosen ? chosen.findings : []), ...kinds.findings]
  if ('findings' in chosen || unusable.length > 0)
    return {
      packet: { ...about, pages: [] },
      count: 0,
      areaBound: 0,
      sheets: [],
      shapes: () => [],
      findings: unusable,
    }
  const { paper, printer: reached, overlap } = chosen.page
  const workshop = { ...before.workshop, printer: reached }
  const context = {
    model: { ...model, parts },
    workshop,
    fonts,
    copies: choices.copies ?? 'piece',
    errors: errorsByPart(before.findings, before.style),
    ...(strip !== undefined && 'strip' in strip ? { strip: strip.strip } : {}),
  }
  const options = {
    paper,
    units: model.units,
    workshop,
    ...(choices.printer === undefined ? {} : { printer: choices.printer }),
    ...(overlap === undefined ? {} : { overlap }),
  }
  const sheets = makeSheets(context, kinds.makers)
  const laid = layOutPages(sheets.map(toLay), options, fonts)
  const findings = [
    ...laid.misfits.map(misfit => misfitFinding(misfit, sheets, paper)),
    ...laid.large.flatMap(large => seamFindings(large, sheets)),
    ...(choices.strip !== undefined && sheets.length === 0 ? [noEdgeForStrip(choices.strip)] : []),
  ]
  const covered = { laid, sheets, findings: [...before.findings, ...findings], style: before.style }
  // where nothing of what is wanted could be laid out, there is nothing for a cover to lead to
  const empty = laid.count === 0 && kinds.makers.length > 0
  const cover = kinds.cover && !empty ? layOutCover(covered, options, context) : { count: 0, pages: [] }
  const count = cover.count + laid.count
  return {
    packet: { ...about, pages: oneAfterTheOther(cover.pages, laid.pages({ before: cover.count, count })) },
    count,
    areaBound: cover.count + laid.areaBound,
    sheets,
    shapes: () => shapesFor(context, kinds.makers),
    findings,
  }
}

/** The one part that a strip is for, and what is wrong where there is none. */
function partOf(strip: ReturnType<typeof chooseStrip>): {
  readonly parts: readonly Part[]
  readonly findings: readonly Finding[]
} {
  return 'part' in strip ? { parts: [strip.part], findings: [] } : { parts: [], findings: strip.findings }
}

function toLay({ id, part, drawings, otherwise, large }: Sheet): SheetToLay {
  const instead = otherwise === undefined ? {} : { otherwise }
  return { id, group: part, drawings, ...instead, ...(large === undefined ? {} : { large }) }
}

/** Both lists of pages, from the beginning as often as they are asked for. */
function oneAfterTheOther(first: Iterable<Page>, second: Iterable<Page>): Iterable<Page> {
  return {
    *[Symbol.iterator]() {
      yield* first
      yield* second
    },
  }
}

function partAndPieces({ part, drawings: [{ caption }] }: Sheet): string {
  return caption.pieces === undefined ? part : `${part} (${caption.pieces})`
}

function misfitFinding(
  { id, wanted, available, othersLaid }: Misfit,
  sheets: readonly Sheet[],
  paper: Paper,
): FindingOf<'does-not-fit'> {
  const sheet = sheets.find(s => s.id === id)
  const mm = (value: number) => ({ value, unit: 'mm' as const })
  return {
    rule: 'does-not-fit',
    severity: 'error',
    places: [sheet === undefined ? {} : { part: sheet.part }],
    facts: {
      sheet: sheet?.kind ?? id,
      of: sheet === undefined ? id : partAndPieces(sheet),
      words: othersLaid ? 'printed' : 'left out',
      paper: paper.name,
      width: mm(wanted.width),
      height: mm(wanted.height),
      freeWidth: mm(available.width),
      freeHeight: mm(available.height),
    },
  }
}
