import type { Finding } from '../finding/finding.ts'
import type { Unit } from '../length/unit.ts'
import { scaleSheet } from '../paper/scale-sheet/scale-sheet.ts'
import { renderPdf } from '../render/pdf/render-pdf.ts'
import { defaultWorkshop } from '../workshop/defaults.ts'
import { choosePage } from './choose-page.ts'
import type { Choices, Surroundings } from './inputs.ts'
import { openFonts } from './open-fonts.ts'

/** A scale sheet as a PDF, with the bars on it, `180x240`; without `pdf` the findings say why there is none. */
export type PrintedScale = {
  readonly pdf?: Uint8Array
  readonly bars?: string
  readonly findings: readonly Finding[]
}

/** The sheet by which a printer is measured. Bare numbers are in `unit`, which also says the usual paper. */
export async function printScale(
  choices: Pick<Choices, 'paper' | 'margin'>,
  unit: Unit,
  around: Surroundings,
): Promise<PrintedScale> {
  const chosen = choosePage(choices, unit, defaultWorkshop)
  if ('findings' in chosen) return { findings: chosen.findings }
  const { paper, printer } = chosen.page
  const fonts = openFonts(around.fonts)
  const sheet = scaleSheet(paper, { printer }, fonts)
  if (sheet === undefined)
    return {
      findings: [{ rule: 'no-room-on-paper', severity: 'error', places: [], facts: { paper: paper.name } }],
    }
  const { date } = around
  const about = { title: 'Scale sheet', language: 'en', ...(date === undefined ? {} : { date }) }
  const pdf = await renderPdf({ ...about, pages: [sheet.page] }, fonts, around.version)
  return { pdf, bars: `${sheet.bars.across}x${sheet.bars.along}`, findings: [] }
}
