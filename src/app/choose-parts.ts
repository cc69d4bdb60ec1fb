import type { FindingOf } from '../finding/finding.ts'
import { nearestName } from '../length/nearest-name.ts'
import type { Model, Part } from '../model/part.ts'

/** The parts asked for, in the plan's order, or all of them; and what was asked for and is not in the plan. */
export function chooseParts(
  { parts, undrawn }: Model,
  wanted: readonly string[] | undefined,
): { readonly parts: readonly Part[]; readonly findings: readonly FindingOf<'unknown-part'>[] } {
  if (wanted === undefined) return { parts, findings: [] }
  const ids = [...parts, ...undrawn].map(({ id }) => id)
  const unknown = [...new Set(wanted)].filter(id => !ids.includes(id))
  return {
    parts: parts.filter(({ id }) => wanted.includes(id)),
    findings: unknown.map((found): FindingOf<'unknown-part'> => {
      const nearest = nearestName(found, ids)
      return {
        rule: 'unknown-part',
        severity: 'error',
        places: [],
        facts: { found, allowed: ids.join(', '), ...(nearest === undefined ? {} : { nearest }) },
      }
    }),
  }
}
