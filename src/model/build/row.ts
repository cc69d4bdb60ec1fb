import type { Point } from '../../geometry/shape/point.ts'
import { faceDirections } from '../../plan/face-directions.ts'
import type { RowPlan } from '../../plan/plan.ts'
import { boxPose, inward } from '../box-faces.ts'
import type { Feature } from '../feature.ts'
import type { Context } from './context.ts'
import { type CutBuilder, isKnown, missingSizes, unplaced } from './cut-builder.ts'
import { place } from './position.ts'
import { resolveDepth, resolvePositive } from './resolve-size.ts'

/** Holes in a line: the first at the place given, or the whole row in the middle where it is centred along its own direction. */
export const buildRow: CutBuilder<RowPlan> = (context, cut, extent) => {
  const face = cut.on.value
  const direction = rowDirection(context, cut)
  const spacing = resolvePositive(context, cut.spacing, 'the spacing')
  const diameter = resolvePositive(context, cut.diameter, 'the diameter')
  const depth = resolveDepth(context, cut.depth)
  const placed = place(context, face, extent, cut.at, { along: 0, across: 0 })
  if (direction === undefined || spacing === undefined || diameter === undefined || depth === undefined)
    return []
  if (placed === undefined) return []
  const missing = [
    ...missingSizes({ spacing, diameter, depth }),
    ...('missing' in placed ? placed.missing : []),
  ]
  if (!isKnown(spacing) || !isKnown(diameter) || depth === 'unknown' || 'missing' in placed)
    return unplaced(cut, missing)

  const count = cut.count.value
  const step = stepToward(cut, extent, spacing.mm)
  const back = cut.at[direction]?.kind === 'centre' ? (count - 1) / 2 : 0
  return Array.from({ length: count }, (_, i): Feature => {
    const centre = { x: placed.at.x + step.x * (i - back), y: placed.at.y + step.y * (i - back) }
    return {
      id: `${cut.id.value}.${i + 1}`,
      face,
      shape: { kind: 'bore', centre, diameter, depth },
      row: { row: cut.id.value, number: i + 1, count },
      source: cut.source,
    }
  })
}

/** Which of the face's two directions the row runs in. */
function rowDirection(context: Context, cut: RowPlan): 'along' | 'across' | undefined {
  const { along, across } = faceDirections[cut.on.value]
  const toward = cut.toward.value
  if (along.includes(toward)) return 'along'
  if (across.includes(toward)) return 'across'
  context.report({
    rule: 'row-direction',
    severity: 'error',
    places: [{ source: cut.toward.source }],
    facts: { found: toward, allowed: [...along, ...across].join(', ') },
  })
  return undefined
}

/** From one hole to the next, on the face. */
function stepToward(cut: RowPlan, extent: Parameters<typeof boxPose>[1], spacing: number): Point {
  const { axis, sign } = inward(cut.toward.value, extent)
  const { right, up } = boxPose(cut.on.value, extent)
  // toward a side is against the direction that leads away from it
  return { x: -sign * right[axis] * spacing, y: -sign * up[axis] * spacing }
}
