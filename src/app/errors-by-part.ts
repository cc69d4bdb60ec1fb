import type { Finding, Place } from '../finding/finding.ts'
import { sentence } from '../finding/sentence.ts'
import type { LengthStyle } from '../length/precision.ts'
import type { PartError } from '../sheet/sheet.ts'

/** The errors among findings, in sentences and with their places, by the ids of the parts that they speak of. */
export function errorsByPart(
  findings: readonly Finding[],
  style: LengthStyle,
): ReadonlyMap<string, readonly PartError[]> {
  const byPart = new Map<string, PartError[]>()
  for (const finding of findings) {
    if (finding.severity !== 'error') continue
    const words = sentence(finding, style)
    for (const part of new Set(finding.places.map(place => place.part))) {
      if (part === undefined) continue
      const own = finding.places.filter(place => place.part === part)
      const error = { words, features: features(own), spots: own.flatMap(({ at }) => at ?? []) }
      const known = byPart.get(part)
      if (known === undefined) byPart.set(part, [error])
      else known.push(error)
    }
  }
  return byPart
}

function features(places: readonly Place[]): readonly string[] {
  return [...new Set(places.flatMap(({ feature }) => feature ?? []))]
}
