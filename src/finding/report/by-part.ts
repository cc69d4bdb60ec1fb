import type { Finding, Severity } from '../finding.ts'

/** The findings about one part; without `part` those about the plan as a whole. */
export type PartFindings = { readonly part: string | undefined; readonly findings: readonly Finding[] }

const rank: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 }

/** Findings by part, those about the whole plan first, parts in the order they come; in each the worst first. */
export function byPart(findings: readonly Finding[]): readonly PartFindings[] {
  const groups = new Map<string | undefined, Finding[]>()
  for (const finding of findings) {
    const part = finding.places[0]?.part
    const group = groups.get(part) ?? []
    groups.set(part, group)
    group.push(finding)
  }
  return [...groups]
    .map(([part, group]) => ({
      part,
      findings: group.toSorted((a, b) => rank[a.severity] - rank[b.severity]),
    }))
    .toSorted((a, b) => Number(a.part !== undefined) - Number(b.part !== undefined))
}
