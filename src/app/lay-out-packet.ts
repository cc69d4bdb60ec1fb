import type { Packet, Paper } from '../drawing/page.ts'
import type { Finding, FindingOf } from '../finding/finding.ts'
import type { Model } from '../model/part.ts'
import { layOutPages, type Misfit } from '../paper/lay-out-pages.ts'
import { makeSheets } from '../sheet/registry.ts'
import type { Sheet } from '../sheet/sheet.ts'
import type { Fonts } from '../text/fonts.ts'
import { defaultWorkshop } from '../workshop/defaults.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { choosePaper } from './choose-paper.ts'
import { chooseParts } from './choose-parts.ts'
import type { Choices } from './inputs.ts'

export type LaidPacket = {
  readonly packet: Packet
  readonly count: number
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
  workshop: Workshop = defaultWorkshop,
): LaidPacket {
  const chosenParts = chooseParts(model, choices.parts)
  const chosenPaper = choosePaper(choices.paper, model.units)
  const about = { title: model.title, language: 'en', ...(date === undefined ? {} : { date }) }
  if ('finding' in chosenPaper || chosenParts.findings.length > 0) {
    const findings = [...chosenParts.findings, ...('finding' in chosenPaper ? [chosenPaper.finding] : [])]
    return { packet: { ...about, pages: [] }, count: 0, sheets: [], findings }
  }
  const { paper } = chosenPaper
  const { parts } = chosenParts
  const sheets = makeSheets({ model: { ...model, parts }, workshop, fonts })
  const arrangements = sheets.map(({ id, drawings }) => ({ id, drawings }))
  const laid = layOutPages(arrangements, paper, model.units, workshop, fonts)
  return {
    packet: { ...about, pages: laid.pages },
    count: laid.count,
    sheets,
    findings: laid.misfits.map(misfit => misfitFinding(misfit, sheets, paper)),
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
