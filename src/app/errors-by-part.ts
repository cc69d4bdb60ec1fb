import type { Finding } from '../finding/finding.ts'
import { sentence } from '../finding/sentence.ts'
import type { LengthStyle } from '../length/precision.ts'

/** The errors among findings, in sentences, by the ids of the parts that they speak of. */
export function errorsByPart(
  findings: readonly Finding[],
  style: LengthStyle,
): ReadonlyMap<string, readonly string[]> {
  const byPart = new Map<string, string[]>()
  for (const finding of findings) {
    if (finding.severity !== 'error') continue
    const words = sentence(finding, style)
    for (const part of new Set(finding.places.map(place => place.part))) {
      if (part === undefined) continue
      const known = byPart.get(part)
      if (known === undefined) byPart.set(part, [words])
      else known.push(words)
    }
  }
  return byPart
}
