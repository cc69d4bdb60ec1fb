import { renderSvgPage } from '../render/svg/render-page.ts'
import { chooseKerf } from './choose-kerf.ts'
import type { Found } from './found.ts'
import type { Choices, NamedBytes, PlanText, Surroundings, SvgChoices } from './inputs.ts'
import { layOutPacket } from './lay-out-packet.ts'
import { lettersMissing } from './letters-missing.ts'
import { machineFiles } from './machine-files.ts'
import { openFonts } from './open-fonts.ts'
import { readJob } from './read-job.ts'
import { toldPages } from './told-pages.ts'

/** A packet as SVG files: none where nothing could be drawn, and then the findings say why. */
export type PrintedSvg = Found & {
  readonly files: readonly NamedBytes[]
  readonly pages: number
  /** No packing of the same sheets has fewer pages than this. */
  readonly areaBound: number
}

/** One SVG a page, and one a template with nothing in it but what is cut and bored, unless `svg` says otherwise. */
export function printSvg(
  plan: PlanText,
  choices: Choices,
  around: Pick<Surroundings, 'fonts' | 'progress'>,
  svg: SvgChoices = {},
): PrintedSvg {
  const { job, findings, texts, style } = readJob(plan, choices.shop)
  if (job === undefined) return { files: [], pages: 0, areaBound: 0, findings, texts, style }
  const chosen = chooseKerf(svg.kerf, job.model.units)
  if ('finding' in chosen)
    return { files: [], pages: 0, areaBound: 0, findings: [...findings, chosen.finding], texts, style }
  const fonts = openFonts(around.fonts)
  const laid = layOutPacket(job.model, choices, fonts, undefined, { findings, style, workshop: job.workshop })
  const encoder = new TextEncoder()
  const digits = String(laid.count).length
  const files: NamedBytes[] = []
  for (const page of toldPages(laid.packet, laid.count, around.progress).pages) {
    const name = `page-${String(page.number).padStart(digits, '0')}.svg`
    files.push({ name, bytes: encoder.encode(renderSvgPage(page, laid.packet, fonts, svg)) })
  }
  const machine = machineFiles(laid.shapes(), { ...svg, kerf: chosen.mm }, laid.packet.language, fonts)
  return {
    files: [...files, ...machine.files],
    pages: laid.count,
    areaBound: laid.areaBound,
    findings: [...findings, ...laid.findings, ...machine.findings, ...lettersMissing(laid, fonts)],
    texts,
    style,
  }
}
