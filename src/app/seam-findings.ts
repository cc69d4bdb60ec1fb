import type { FindingOf } from '../finding/finding.ts'
import type { LaidLarge } from '../paper/lay-out-pages.ts'
import type { SpareKind } from '../paper/tile/spare.ts'
import type { Sheet } from '../sheet/sheet.ts'

const words: Readonly<Record<SpareKind, readonly [one: string, several: string]>> = {
  hole: ['hole', 'holes'],
  end: ['end of a slot, arc or edge', 'ends of slots, arcs or edges'],
  label: ['label', 'labels'],
}

/** A warning where a seam runs through something since no position spares it. */
export function seamFindings(
  { id, crossed }: LaidLarge,
  sheets: readonly Sheet[],
): readonly FindingOf<'seam-crosses'>[] {
  if (crossed.length === 0) return []
  const sheet = sheets.find(s => s.id === id)
  const counted = crossed.map(({ kind, count }) => `${count} ${words[kind][count === 1 ? 0 : 1]}`)
  const before = counted.slice(0, -1).join(', ')
  const what = before === '' ? counted[0]! : `${before} and ${counted.at(-1)}`
  return [
    {
      rule: 'seam-crosses',
      severity: 'warning',
      places: [sheet === undefined ? {} : { part: sheet.part }],
      facts: { sheet: sheet?.kind ?? id, what },
    },
  ]
}
