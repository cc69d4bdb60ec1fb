import type { Finding } from '../finding/finding.ts'
import { fault } from './fault.ts'
import { maxFindings } from './limits.ts'

/**
 * Findings by their place in the file, each once (an alias repeats what is wrong where it leads), and only the
 * first ones of very many.
 */
export function inOrder(findings: readonly Finding[], file: string): readonly Finding[] {
  const seen = new Set<string>()
  const sorted = findings
    .filter(finding => {
      const key = JSON.stringify(finding)
      const first = !seen.has(key)
      seen.add(key)
      return first
    })
    .sort((a, b) => placeOf(a) - placeOf(b) || endOf(a) - endOf(b) || compareText(a.rule, b.rule))
  const [more] = sorted.splice(maxFindings)
  if (!more) return sorted
  const from = placeOf(more)
  return [...sorted, fault('findings-left-out', { file, from, to: from }, {})]
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
