import type { Packet, Paper } from '../drawing/page.ts'
import type { Finding } from '../finding/finding.ts'
import { nearestName } from '../length/nearest-name.ts'
import type { Model } from '../model/part.ts'
import { layOutPages, type Misfit } from '../paper/lay-out-pages.ts'
import { makeSheets } from '../sheet/registry.ts'
import type { Sheet } from '../sheet/sheet.ts'
import type { Fonts } from '../text/fonts.ts'
import { defaultWorkshop } from '../workshop/defaults.ts'

/** What is wanted of the packet. */
export type Choices = {
  readonly paper: Paper
  /** The parts to print, all of them unless given. */
  readonly parts?: readonly string[]
}

export type LaidPacket = {
  readonly packet: Packet
  readonly count: number
  readonly sheets: readonly Sheet[]
  readonly findings: readonly Finding[]
}

/** Draws the sheets that are wanted and lays them on pages; says what did not fit and what there is no such part of. */
export function layOutPacket(model: Model, { paper, parts }: Choices, fonts: Fonts, date: Date): LaidPacket {
  const chosen = chooseParts(model, parts)
  const sheets = makeSheets({ model: { ...model, parts: chosen.parts }, workshop: defaultWorkshop, fonts })
  const arrangements = sheets.map(({ id, drawings }) => ({ id, drawings }))
  const laid = layOutPages(arrangements, paper, model.units, defaultWorkshop, fonts)
  return {
    packet: { title: model.title, language: 'en', date, pages: laid.pages },
    count: laid.count,
    sheets,
    findings: [...chosen.findings, ...laid.misfits.map(misfit => misfitFinding(misfit, sheets, paper))],
  }
}

function chooseParts(model: Model, wanted: readonly string[] | undefined) {
  if (wanted === undefined) return { parts: model.parts, findings: [] }
  const ids = [...model.parts, ...model.undrawn].map(({ id }) => id)
  const findings = wanted
    .filter(id => !ids.includes(id))
    .map((found): Finding => {
      const nearest = nearestName(found, ids)
      return {
        rule: 'unknown-part',
        severity: 'error',
        places: [],
        facts: { found, allowed: ids.join(', '), ...(nearest === undefined ? {} : { nearest }) },
      }
    })
  return { parts: model.parts.filter(({ id }) => wanted.includes(id)), findings }
}

function misfitFinding({ id, wanted, available }: Misfit, sheets: readonly Sheet[], paper: Paper): Finding {
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
