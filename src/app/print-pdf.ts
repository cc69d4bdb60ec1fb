import type { Finding } from '../finding/finding.ts'
import { renderPdf } from '../render/pdf/render-pdf.ts'
import type { Found } from './found.ts'
import type { Choices, PlanText, Surroundings } from './inputs.ts'
import { layOutPacket } from './lay-out-packet.ts'
import { lettersMissing } from './letters-missing.ts'
import { openFonts } from './open-fonts.ts'
import { readJob } from './read-job.ts'
import { toldPages } from './told-pages.ts'

/** A packet as one PDF file; without `pdf` there was nothing that could be printed, and the findings say why. */
export type PrintedPdf = Found & {
  readonly pdf?: Uint8Array
  readonly pages: number
  /** No packing of the same sheets has fewer pages than this. */
  readonly areaBound: number
}

/** One plan text in, one PDF out, and all that was found on the way. */
export async function printPdf(plan: PlanText, choices: Choices, around: Surroundings): Promise<PrintedPdf> {
  const { job, findings, texts, style } = readJob(plan, choices.shop)
  if (job === undefined) return { pages: 0, areaBound: 0, findings, texts, style }
  const fonts = openFonts(around.fonts)
  const laid = layOutPacket(job.model, choices, fonts, around.date, {
    findings,
    style,
    workshop: job.workshop,
  })
  const all = [...concerning(findings, choices.strip), ...laid.findings, ...lettersMissing(laid, fonts)]
  if (laid.count === 0) return { pages: 0, areaBound: 0, findings: all, texts, style }
  const packet = toldPages(laid.packet, laid.count, around.progress)
  const pdf = await renderPdf(packet, fonts, around.version, around.pack)
  return { pdf, pages: laid.count, areaBound: laid.areaBound, findings: all, texts, style }
}

/** Who asks for one strip is told of its part and of the plan, and not of the other parts. */
function concerning(findings: readonly Finding[], strip: Choices['strip']): readonly Finding[] {
  const [part] = strip?.split(/[./]/, 1) ?? []
  if (part === undefined) return findings
  return findings.filter(({ places }) =>
    places.every(place => place.part === undefined || place.part === part),
  )
}
