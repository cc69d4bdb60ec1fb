import { renderSvgDrawing } from '../render/svg/render-drawing.ts'
import { renderSvgPage } from '../render/svg/render-page.ts'
import type { Found } from './found.ts'
import type { Choices, NamedBytes, PlanText, Surroundings } from './inputs.ts'
import { layOutPacket } from './lay-out-packet.ts'
import { lettersMissing } from './letters-missing.ts'
import { openFonts } from './open-fonts.ts'
import { readJob } from './read-job.ts'

/** A packet as SVG files: none where nothing could be drawn, and then the findings say why. */
export type PrintedSvg = Found & { readonly files: readonly NamedBytes[]; readonly pages: number }

/** One SVG a page, and one a template with nothing in it but what is cut and bored. */
export function printSvg(plan: PlanText, choices: Choices, around: Pick<Surroundings, 'fonts'>): PrintedSvg {
  const { job, findings, texts, style } = readJob(plan, choices.shop)
  if (job === undefined) return { files: [], pages: 0, findings, texts, style }
  const fonts = openFonts(around.fonts)
  const laid = layOutPacket(job.model, choices, fonts, undefined, job.workshop)
  const encoder = new TextEncoder()
  const digits = String(laid.count).length
  const files: NamedBytes[] = []
  for (const page of laid.packet.pages) {
    const name = `page-${String(page.number).padStart(digits, '0')}.svg`
    files.push({ name, bytes: encoder.encode(renderSvgPage(page, laid.packet, fonts)) })
  }
  for (const { id, drawings } of laid.sheets) {
    files.push({
      name: `${id}.svg`,
      bytes: encoder.encode(renderSvgDrawing(drawings[0], laid.packet.language)),
    })
  }
  return {
    files,
    pages: laid.count,
    findings: [...findings, ...laid.findings, ...lettersMissing(laid, fonts)],
    texts,
    style,
  }
}
