import type { Packet, Paper } from '../drawing/page.ts'
import type { Finding, FindingOf } from '../finding/finding.ts'
import type { Model } from '../model/part.ts'
import type { Misfit } from '../paper/fill-pages.ts'
import { layOutPages } from '../paper/lay-out-pages.ts'
import { makeSheets } from '../sheet/registry.ts'
import type { Sheet } from '../sheet/sheet.ts'
import type { Fonts } from '../text/fonts.ts'
import { defaultWorkshop } from '../workshop/defaults.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { choosePage } from './choose-page.ts'
import { chooseParts } from './choose-parts.ts'
import type { Choices } from './inputs.ts'
import { seamFindings } from './seam-findings.ts'

export type LaidPacket = {
  readonly packet: Packet
  readonly count: number
  /** No packing has fewer pages than this, by the areas of what is on them. */
  readonly areaBound: number
  readonly sheets: readonly Sheet[]
  readonly findings: readonly Finding[]
}

/**
 * Draws the sheets that are wanted and lays them on pages; says what did not fit. What cannot be meant (a part
 * that the plan does not have, a paper that does not exist) is said, and then nothing is laid out.
 */
export function layOutPacket(
  model: Model,
  choices: Choices,
  fonts: Fonts,
  date: Date | undefined,
  shop: Workshop = defaultWorkshop,
): LaidPacket {
  const { parts, findings: unknownParts } = chooseParts(model, choices.parts)
  const chosen = choosePage(choices, model.units, shop)
  const about = { title: model.title, language: 'en', ...(date === undefined ? {} : { date }) }
  if ('findings' in chosen || unknownParts.length > 0) {
    const findings = [...unknownParts, ...('findings' in chosen ? chosen.findings : [])]
    return { packet: { ...about, pages: [] }, count: 0, areaBound: 0, sheets: [], findings }
  }
  const { paper, printer: reached, overlap } = chosen.page
  const workshop = { ...shop, printer: reached }
  const context = { model: { ...model, parts }, workshop, fonts, copies: choices.copies ?? 'piece' }
  const sheets = makeSheets(context)
  const laid = layOutPages(
    sheets.map(({ id, part, drawings, large }) => ({
      id,
      group: part,
      drawings,
      ...(large === undefined ? {} : { large }),
    })),
    {
      paper,
      units: model.units,
      workshop,
      ...(choices.printer === undefined ? {} : { printer: choices.printer }),
      ...(overlap === undefined ? {} : { overlap }),
    },
    fonts,
  )
  return {
    packet: { ...about, pages: laid.pages() },
    count: laid.count,
    areaBound: laid.areaBound,
    sheets,
    findings: [
      ...laid.misfits.map(misfit => misfitFinding(misfit, sheets, paper)),
      ...laid.large.flatMap(large => seamFindings(large, sheets)),
    ],
  }
}

function misfitFinding(
  { id, wanted, available }: Misfit,
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
      paper: paper.name,
      width: mm(wanted.width),
      height: mm(wanted.height),
      freeWidth: mm(available.width),
      freeHeight: mm(available.height),
    },
  }
}
