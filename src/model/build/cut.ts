import type { CutPlan } from '../../plan/plan.ts'
import type { Feature } from '../feature.ts'
import { buildBevel } from './bevel.ts'
import type { CutBuilder } from './cut-builder.ts'
import { buildCutOut } from './cut-out.ts'
import { buildChamfer, buildRoundOver } from './eased.ts'
import { buildEngraving } from './engraving.ts'
import { buildGrid } from './grid.ts'
import { buildGroove } from './groove.ts'
import { buildHole } from './hole.ts'
import { buildHoleCircle } from './hole-circle.ts'
import { buildNotch } from './notch.ts'
import { buildRebate } from './rebate.ts'
import { buildRow } from './row.ts'
import type { Site } from './site.ts'
import { buildSlot } from './slot.ts'

/** One line a kind of cut; a kind without its line fails the type check. */
const builders: { readonly [K in CutPlan['kind']]: CutBuilder<Extract<CutPlan, { kind: K }>> } = {
  hole: buildHole,
  row: buildRow,
  grid: buildGrid,
  'hole-circle': buildHoleCircle,
  slot: buildSlot,
  notch: buildNotch,
  'cut-out': buildCutOut,
  groove: buildGroove,
  rebate: buildRebate,
  bevel: buildBevel,
  chamfer: buildChamfer,
  'round-over': buildRoundOver,
  engrave: buildEngraving,
}

export function buildCut(site: Site, cut: CutPlan): readonly Feature[] {
  // the registry pairs every kind with its own builder; the compiler cannot follow the pairing through the index
  const build = builders[cut.kind] as CutBuilder<CutPlan>
  return build(site, cut)
}
