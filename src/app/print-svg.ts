import { renderSvgDrawing } from '../render/svg/render-drawing.ts'
import { renderSvgPage } from '../render/svg/render-page.ts'
import type { Found } from './found.ts'
import type { Choices, NamedBytes, PlanText, Surroundings } from './inputs.ts'
import { layOutPacket } from './lay-out-packet.ts'
import { lettersMissing } from './letters-missing.ts'
import { openFonts } from './open-fonts.ts'
import { readModel } from './read-model.ts'

/** A packet as SVG files: none where nothing could be drawn, and then the findings say why. */
export type PrintedSvg = Found & {
  readonly files: readonly NamedBytes[]
  readonly pages: number
  /** No packing of the same sheets has fewer pages than this. */
  readonly areaBound: number
}

/** One SVG a page, and one a template with nothing in it but what is cut and bored. */
export function printSvg(plan: PlanText, choices: Choices, around: Pick<Surroundings, 'fonts'>): PrintedSvg {
  const { model, findings, texts, style } = readModel(plan)
  if (model === undefined) return { files: [], pages: 0, areaBound: 0, findings, texts, style }
  const fonts = openFonts(around.fonts)
  const laid = layOutPacket(model, choices, fonts, undefined, { findings, style })
  const encoder = new TextEncoder()
  const digits = String(laid.count).length
  const files: NamedBytes[] = []
  for (const page of laid.packet.pages) {
    const name = `page-${String(page.number).padStart(digits, '0')}.svg`
    files.push({ name, bytes: encoder.encode(renderSvgPage(page, laid.packet, fonts)) })
  }
  for (const { forMachine, drawings } of laid.sheets) {
    if (forMachine === undefined) continue
    const drawing = { ...drawings[0], id: forMachine }
    files.push({
      name: `${forMachine}.svg`,
      bytes: encoder.encode(renderSvgDrawing(drawing, laid.packet.language)),
    })
  }
  return {
    files,
    pages: laid.count,
    areaBound: laid.areaBound,
    findings: [...findings, ...laid.findings, ...lettersMissing(laid, fonts)],
    texts,
    style,
  }
}
