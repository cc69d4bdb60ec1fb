import type { Finding } from '../../finding/finding.ts'
import type { CutPlan } from '../../plan/plan.ts'
import type { Extent } from '../box-faces.ts'
import type { Feature } from '../feature.ts'
import type { Context } from './context.ts'
import type { CutBuilder } from './cut-builder.ts'
import { buildHole } from './hole.ts'
import { buildNotch } from './notch.ts'
import { buildRow } from './row.ts'
import { buildSlot } from './slot.ts'

/** One line a kind of cut; a kind without its line fails the type check. */
const builders: { readonly [K in CutPlan['kind']]: CutBuilder<Extract<CutPlan, { kind: K }>> } = {
  hole: buildHole,
  row: buildRow,
  slot: buildSlot,
  notch: buildNotch,
}

/** A fault found inside a cut says so in each of its places. */
export function buildCut(context: Context, cut: CutPlan, extent: Extent): readonly Feature[] {
  // the registry pairs every kind with its own builder; the compiler cannot follow the pairing through the index
  const build = builders[cut.kind] as CutBuilder<CutPlan>
  const feature = cut.id.value
  const report = (finding: Finding): void =>
    context.report({ ...finding, places: finding.places.map(place => ({ feature, ...place })) })
  return build({ ...context, report }, cut, extent)
}
