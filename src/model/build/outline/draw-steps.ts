import { biarcsThrough } from '../../../geometry/construct/biarcs.ts'
import { distance, type Point } from '../../../geometry/shape/point.ts'
import { line, type Segment, withTag } from '../../../geometry/shape/segment.ts'
import { coincident, printable } from '../../../number/tolerance.ts'
import type { OutlineStep } from '../../../plan/plan.ts'
import type { Missing } from '../../feature.ts'
import type { OutlineFault } from '../../shape-facts.ts'
import type { Context } from '../context.ts'
import { drawArc } from './draw-arc.ts'
import { type Box, resolvePoint } from './resolve-point.ts'
import { edgeName } from './step-name.ts'

/** How far a curve of arcs may pass by the points it is given, in millimetres. */
const curveDeviation = printable / 10

/** The edges of each step, from the second on, and where the outline begins and ends. */
export type DrawnSteps = {
  readonly start: Point
  readonly end: Point
  readonly edges: readonly (readonly Segment[])[]
  readonly faults: readonly OutlineFault[]
}

/** Goes along the steps. Nothing comes of it where a fault has been reported; what the drawing lacks is listed. */
export function drawSteps(
  context: Context,
  steps: readonly [OutlineStep, ...OutlineStep[]],
  box: Box,
): DrawnSteps | { readonly missing: readonly Missing[] } | undefined {
  const missing: Missing[] = []
  const faults: OutlineFault[] = []
  const edges: (readonly Segment[])[] = []
  const lack = (name: string, index: number) =>
    missing.push({ kind: 'size', name: `${name} of ${edgeName(steps[index]!, index)} of the outline` })
  let sound = true
  let at: Point | undefined
  let start: Point | undefined

  for (const [index, step] of steps.entries()) {
    const points = pointsOf(step).map(point => resolvePoint(context, point, box))
    if (points.includes(undefined)) sound = false
    if (points.includes('unknown')) lack(step.kind === 'curve' ? 'points' : 'end', index)
    const known = points.filter((p): p is Point => typeof p === 'object')
    const to = known.length === points.length ? known.at(-1) : undefined
    if (index === 0) start = to
    // where a place is not known, what leads on from there is looked at all the same, from a place of no account
    const from = at ?? { x: 0, y: 0 }
    at = to
    if (index === 0) continue
    const end = to ?? { x: from.x + 1, y: from.y }
    const drawn = drawStep(context, step, from, end, known, edges.findLast(e => e.length > 0)?.at(-1), box)
    if (drawn === 'no-length') {
      if (sound && missing.length === 0) {
        faults.push({ kind: 'no-length', edges: [edgeName(step, index)], at: from, source: step.source })
      }
      edges.push([])
    } else if (drawn === undefined) sound = false
    else if ('lacks' in drawn) lack(drawn.lacks, index)
    else edges.push(drawn.map(segment => withTag(segment, edgeName(step, index))))
  }
  if (!sound) return undefined
  if (missing.length > 0 || start === undefined || at === undefined) return { missing }
  return { start, end: at, edges, faults }
}

function pointsOf(step: OutlineStep) {
  return step.kind === 'curve' ? step.points : [step.to]
}

function drawStep(
  context: Context,
  step: OutlineStep,
  from: Point,
  to: Point,
  points: readonly Point[],
  before: Segment | undefined,
  box: Box,
): readonly Segment[] | 'no-length' | { readonly lacks: string } | undefined {
  if (step.kind === 'curve') {
    const through = [from, ...points]
    const apart = through.every((p, i) => i === 0 || distance(through[i - 1]!, p) > coincident)
    const curve = apart ? biarcsThrough(through, curveDeviation) : undefined
    if (curve?.ok) return curve.value.segments
    context.report({
      rule: 'curve-impossible',
      severity: 'error',
      places: [{ source: step.source }],
      facts: { points: { value: points.length, unit: 'count' } },
    })
    return undefined
  }
  if (distance(from, to) <= coincident) return 'no-length'
  if (step.kind === 'line') return [line(from, to)]
  const arc = drawArc(context, step, from, to, before, box)
  return arc === undefined || 'lacks' in arc ? arc : [arc]
}
