import type { HolePlan } from '../../plan/plan.ts'
import type { CutBuilder } from './cut-builder.ts'
import { buildHoles } from './holes.ts'

export const buildHole: CutBuilder<HolePlan> = (site, cut) =>
  buildHoles(site, cut, (_, at) => ({ centres: [[at, { pattern: 'row' }]] }))
