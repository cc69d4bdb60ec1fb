import type { Finding } from '../finding/finding.ts'

/** Findings by their place in the file, each once: an alias repeats what is wrong where it leads. */
export function inOrder(findings: readonly Finding[]): Finding[] {
  const seen = new Set<string>()
  return findings
    .filter(finding => {
      const key = JSON.stringify(finding)
      const first = !seen.has(key)
      seen.add(key)
      return first
    })
    .sort((a, b) => placeOf(a) - placeOf(b) || endOf(a) - endOf(b) || compareText(a.rule, b.rule))
}

function placeOf(finding: Finding): number {
  return finding.places[0]?.source?.from ?? 0
}

function endOf(finding: Finding): number {
  return finding.places[0]?.source?.to ?? 0
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
