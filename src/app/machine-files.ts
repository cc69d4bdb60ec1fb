import { compensateKerf } from '../drawing/compensate-kerf.ts'
import type { Finding } from '../finding/finding.ts'
import { renderSvgDrawing } from '../render/svg/render-drawing.ts'
import type { Sheet } from '../sheet/sheet.ts'
import type { Fonts } from '../text/fonts.ts'
import type { NamedBytes, SvgChoices } from './inputs.ts'

/** A file for a cutting machine of each shape that is cut, however many pieces have it, and what the kerf does not go into. */
export function machineFiles(
  sheets: readonly Sheet[],
  { lines, text, engraving, kerf = 0 }: Omit<SvgChoices, 'kerf'> & { readonly kerf?: number },
  language: string,
  fonts: Fonts,
): { readonly files: readonly NamedBytes[]; readonly findings: readonly Finding[] } {
  const options = {
    ...(lines === undefined ? {} : { lines }),
    ...(text === true ? { text: fonts } : {}),
    ...(engraving === true ? { engraving } : {}),
  }
  const limit = Number.isFinite(kerf) ? { limit: { value: kerf, unit: 'mm' as const } } : {}
  const encoder = new TextEncoder()
  const files: NamedBytes[] = []
  const findings: Finding[] = []
  for (const { forMachine: id, part, drawings } of sheets) {
    if (id === undefined) continue
    const { caption, marks, bounds, keepWhole } = drawings[0]
    const compensated = compensateKerf({ id, caption, marks, bounds, keepWhole }, kerf)
    if (!compensated.ok) {
      const rule = 'kerf-not-compensated'
      findings.push({ rule, severity: 'error', places: [{ part }], ...limit, facts: { sheet: id } })
      continue
    }
    const { drawing, tooNarrow } = compensated.value
    files.push({ name: `${id}.svg`, bytes: encoder.encode(renderSvgDrawing(drawing, language, options)) })
    for (const what of tooNarrow) {
      const place = what.startsWith(`${part}.`) ? { part, feature: what.slice(part.length + 1) } : { part }
      findings.push({
        rule: 'narrower-than-kerf',
        severity: 'warning',
        places: [place],
        ...limit,
        facts: { what },
      })
    }
  }
  return { files, findings }
}
