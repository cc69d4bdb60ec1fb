import type { Paper } from '../drawing/page.ts'
import type { FindingOf } from '../finding/finding.ts'
import type { Unit } from '../length/unit.ts'
import { papers } from '../paper/papers.ts'
import { readPaper } from '../paper/read-paper.ts'

/** What a printer is loaded with where the shop counts in that unit. */
const usualPaper: Readonly<Record<Unit, Paper>> = { inch: papers.letter, mm: papers.a4 }

/** The paper asked for, or the usual one; or why there is none such. Bare numbers are in the plan's units. */
export function choosePaper(
  wanted: string | undefined,
  units: Unit,
): { readonly paper: Paper } | { readonly finding: FindingOf<'unknown-paper'> } {
  if (wanted === undefined) return { paper: usualPaper[units] }
  const read = readPaper(wanted, units)
  if ('paper' in read) return read
  return { finding: { rule: 'unknown-paper', severity: 'error', places: [], facts: read.fault } }
}
