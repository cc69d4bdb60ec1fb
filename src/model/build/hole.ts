import type { HolePlan } from '../../plan/plan.ts'
import { type CutBuilder, isKnown, missingSizes, unplaced } from './cut-builder.ts'
import { place } from './position.ts'
import { resolveDepth, resolvePositive } from './resolve-size.ts'

export const buildHole: CutBuilder<HolePlan> = (context, cut, extent) => {
  const diameter = resolvePositive(context, cut.diameter, 'the diameter')
  const depth = resolveDepth(context, cut.depth)
  const placed = place(context, cut.on.value, extent, cut.at, { along: 0, across: 0 })
  if (diameter === undefined || depth === undefined || placed === undefined) return []
  const missing = [...missingSizes({ diameter, depth }), ...('missing' in placed ? placed.missing : [])]
  if (!isKnown(diameter) || depth === 'unknown' || 'missing' in placed) return unplaced(cut, missing)
  return [
    {
      id: cut.id.value,
      face: cut.on.value,
      shape: { kind: 'bore', centre: placed.at, diameter, depth },
      source: cut.source,
    },
  ]
}
