import type { Finding } from '../../finding/finding.ts'
import type { CutPlan, PartPlan } from '../../plan/plan.ts'

/**
 * Holes, slots and notches of one plan, every hole of a row counted. Parts, cuts and rows have limits of their own,
 * but a file of two megabytes can hold a row of a thousand holes twenty thousand times.
 */
export const mostFeatures = 20_000

/** Where a plan asks for more than `mostFeatures`, at the part that passes it; counted before anything is built. */
export function tooManyFeatures(parts: readonly PartPlan[]): Finding | undefined {
  let count = 0
  let passing: PartPlan | undefined
  for (const part of parts) {
    for (const cut of part.cuts) count += featuresOf(cut)
    if (count > mostFeatures) passing ??= part
  }
  if (passing === undefined) return undefined
  return {
    rule: 'limit-passed',
    severity: 'error',
    places: [{ source: passing.id.source, part: passing.id.value }],
    measured: { value: count, unit: 'count' },
    limit: { value: mostFeatures, unit: 'count' },
    facts: { of: 'holes and cuts' },
  }
}

/** How many features a cut stands for, on all its faces. */
function featuresOf(cut: CutPlan): number {
  if (!('on' in cut)) return 1
  const faces = cut.on.length
  switch (cut.kind) {
    case 'row':
    case 'hole-circle':
      return faces * cut.count.value
    case 'grid':
      return faces * cut.count[0].value * cut.count[1].value
    case 'chamfer':
    case 'round-over':
      return faces * (cut.edges === 'all' ? 1 : cut.edges.length)
    default:
      return faces
  }
}
