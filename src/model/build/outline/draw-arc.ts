import { arcByBend, arcByRadius, arcByTangent, arcThrough } from '../../../geometry/construct/arc-from.ts'
import { tangentAt } from '../../../geometry/measure/along.ts'
import type { Outcome } from '../../../geometry/shape/outcome.ts'
import type { Point } from '../../../geometry/shape/point.ts'
import { type Arc, line, type Segment } from '../../../geometry/shape/segment.ts'
import type { OutlineStep } from '../../../plan/plan.ts'
import type { Context } from '../context.ts'
import { isKnown } from '../cut-builder.ts'
import { resolveAngle, resolvePositive } from '../resolve-size.ts'
import { type Box, resolvePoint } from './resolve-point.ts'

type ArcStep = Extract<OutlineStep, { kind: `arc-${string}` }>

/**
 * The edge of an arc's step, the name of what the drawing does not give of it, or nothing where a fault has been
 * reported. `before` is the edge that comes to `from`.
 */
export function drawArc(
  context: Context,
  step: ArcStep,
  from: Point,
  to: Point,
  before: Segment | undefined,
  box: Box,
): Segment | { readonly lacks: string } | undefined {
  switch (step.kind) {
    case 'arc-by-radius': {
      const radius = resolvePositive(context, step.radius, 'the radius')
      if (!isKnown(radius)) return radius && { lacks: 'radius' }
      return drawn(context, step, arcByRadius(from, to, radius.mm, step.turn.value === 'left' ? 1 : -1))
    }
    case 'arc-through': {
      const via = resolvePoint(context, step.through, box)
      if (via === undefined || via === 'unknown') return via && { lacks: 'point that it goes through' }
      return drawn(context, step, arcThrough(from, via, to))
    }
    case 'arc-by-bend': {
      const bend = resolveAngle(context, step.bend)
      if (bend === undefined || bend === 'unknown') return bend && { lacks: 'bend' }
      return drawn(context, step, arcByBend(from, to, bend), line(from, to))
    }
    case 'arc-tangent':
      if (before === undefined) return refuse(context, step, 'no-direction')
      return tangent(context, step, from, to, before)
  }
}

function tangent(context: Context, step: ArcStep, from: Point, to: Point, before: Segment) {
  const direction = tangentAt(before, 1)
  const forward = direction.x * (to.x - from.x) + direction.y * (to.y - from.y) > 0
  // straight on is an edge too
  return drawn(context, step, arcByTangent(from, direction, to), forward ? line(from, to) : undefined)
}

/** `flat` is what stands for an arc that does not bend. */
function drawn(context: Context, step: ArcStep, made: Outcome<Arc>, flat?: Segment): Segment | undefined {
  if (made.ok) return made.value
  const { reason, facts } = made.fault
  if (reason === 'flat' && flat !== undefined) return flat
  if (reason !== 'radius-too-small') return refuse(context, step, reason)
  context.report({
    rule: 'arc-radius-too-small',
    severity: 'error',
    places: [{ source: step.source }],
    facts: {
      radius: { value: Number(facts.radius), unit: 'mm' },
      least: { value: Number(facts.least), unit: 'mm' },
    },
  })
  return undefined
}

function refuse(context: Context, step: ArcStep, why: string): undefined {
  context.report({
    rule: 'arc-impossible',
    severity: 'error',
    places: [{ source: step.source }],
    facts: { why },
  })
}
