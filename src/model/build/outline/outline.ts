import { easeCorners } from '../../../geometry/construct/corner.ts'
import { signedArea } from '../../../geometry/measure/area.ts'
import { chain } from '../../../geometry/shape/chain.ts'
import type { Contour } from '../../../geometry/shape/contour.ts'
import { distance } from '../../../geometry/shape/point.ts'
import { reverseContour } from '../../../geometry/shape/reverse.ts'
import { line, type Segment } from '../../../geometry/shape/segment.ts'
import { coincident } from '../../../number/tolerance.ts'
import type { OutlinePlan, OutlineStep } from '../../../plan/plan.ts'
import type { Missing } from '../../feature.ts'
import type { MadeCorner, OutlineFault } from '../../shape-facts.ts'
import type { Context } from '../context.ts'
import { isKnown } from '../cut-builder.ts'
import { resolvePositive } from '../resolve-size.ts'
import { awayFromAxis, bothHalves, type CorneredEdge, type CornerMade } from './both-halves.ts'
import { type DrawnSteps, drawSteps } from './draw-steps.ts'
import { findFaults } from './find-faults.ts'
import type { Box } from './resolve-point.ts'
import { cornerName, edgeName, ownNamesOnly } from './step-name.ts'

/** An outline that could be drawn, anticlockwise, in the millimetres of its own points. */
export type MadeOutline = {
  readonly contour: Contour
  /** The edges before their corners were rounded, anticlockwise. */
  readonly sharp: readonly Segment[]
  /** Whether the plan goes round the other way. */
  readonly backwards: boolean
  readonly corners: readonly MadeCorner[]
  /** Corners that stay sharp because the drawing does not give their radius. */
  readonly missing: readonly Missing[]
  readonly unknownCorners: readonly string[]
}

/** What keeps an outline from being drawn. */
export type UndrawnOutline = {
  readonly missing: readonly Missing[]
  readonly faults: readonly OutlineFault[]
}

/** Draws an outline; nothing comes of it where a fault of the plan has been reported. */
export function buildOutline(
  context: Context,
  plan: OutlinePlan,
  box: Box,
): MadeOutline | UndrawnOutline | undefined {
  const corners = resolveCorners(context, plan.steps)
  const drawn = drawSteps(context, plan.steps, box)
  if (corners === undefined || drawn === undefined) return undefined
  if ('missing' in drawn) return { missing: drawn.missing, faults: [] }
  const edges = wayRound(plan, drawn, corners.ends)
  if ('kind' in edges) return { missing: [], faults: [edges] }
  if (drawn.faults.length > 0) return { missing: [], faults: drawn.faults }

  const sharp = chain(
    edges.map(e => e.segment),
    true,
  )
  if (!sharp.ok) throw new RangeError('the steps of an outline follow one another')
  const eased = ease(context, sharp.value, edges)
  if (eased === undefined) return undefined
  const faults = findFaults(eased, plan)
  if (faults.length > 0) return { missing: [], faults }
  const backwards = signedArea(eased) < 0
  const anticlockwise = (contour: Contour): Contour => {
    const { segments } = backwards ? reverseContour(contour) : contour
    return { segments: ownNamesOnly(segments), closed: true }
  }
  return {
    contour: anticlockwise(eased),
    sharp: anticlockwise(sharp.value).segments,
    backwards,
    corners: corners.made,
    missing: corners.missing,
    unknownCorners: corners.unknown,
  }
}

type Corners = {
  /** One for each step, that at its end. */
  readonly ends: readonly (CornerMade | undefined)[]
  readonly made: readonly MadeCorner[]
  readonly missing: readonly Missing[]
  readonly unknown: readonly string[]
}

/** What becomes of the corner at the end of each step. */
function resolveCorners(context: Context, steps: readonly OutlineStep[]): Corners | undefined {
  const ends: (CornerMade | undefined)[] = []
  const made: MadeCorner[] = []
  const missing: Missing[] = []
  const unknown: string[] = []
  let sound = true
  for (const [index, step] of steps.entries()) {
    const { corner } = step
    let end: CornerMade | undefined
    if (corner !== undefined) {
      const word = corner.kind === 'round' ? 'radius' : 'chamfer'
      const name = cornerName(step, index)
      const size = resolvePositive(context, corner.length, `the ${word}`)
      if (size === undefined) sound = false
      else if (!isKnown(size)) {
        missing.push({ kind: 'size', name: `${word} of ${name}` })
        if (step.cornerName) unknown.push(step.cornerName.value)
      } else {
        const easing =
          corner.kind === 'round' ? { radius: size.mm, tag: name } : { chamfer: size.mm, tag: name }
        end = { easing, name, source: corner.length.source }
        made.push({ name, kind: corner.kind, size })
      }
    }
    ends.push(end)
  }
  return sound ? { ends, made, missing, unknown } : undefined
}

/** All edges with the corners that they start in, back to the first; or the fault that they do not lead there. */
function wayRound(
  { steps, symmetric, source }: OutlinePlan,
  { start, end, edges }: DrawnSteps,
  ends: readonly (CornerMade | undefined)[],
): readonly CorneredEdge[] | OutlineFault {
  // the corner at the end of a step is the one that the next edge starts in
  let corner = ends[0]
  const way: CorneredEdge[] = []
  for (const [i, segments] of edges.entries()) {
    for (const segment of segments) {
      way.push({ segment, corner })
      corner = undefined
    }
    corner = ends[i + 1] ?? corner
  }
  if (symmetric !== undefined) {
    const by = awayFromAxis(end, start, symmetric.value)
    if (by <= coincident && way.length > 0) return bothHalves(way, corner, start, symmetric.value)
    const last = steps.length - 1
    return { kind: 'open', edges: [edgeName(steps[last]!, last)], at: end, by, source: symmetric.source }
  }
  if (distance(end, start) > coincident) {
    way.push({ segment: line(end, start, edgeName(steps[0], 0)), corner })
  } else if (way[0] !== undefined) way[0] = { ...way[0], corner: way[0].corner ?? corner }
  if (way.length > 1) return way
  return { kind: 'doubled', edges: [edgeName(steps[0], 0)], at: start, source }
}

function ease(context: Context, sharp: Contour, edges: readonly CorneredEdge[]): Contour | undefined {
  const made = easeCorners(
    sharp,
    edges.map(e => e.corner?.easing),
  )
  if (made.ok) return made.value
  const { reason, facts } = made.fault
  // corners meet on an edge: either the one it starts in is made, or the next
  const guilty = [Number(facts.corner ?? facts.edge), Number(facts.edge) + 1].map(
    i => edges[i % edges.length],
  )
  const corner = guilty.find(edge => edge?.corner !== undefined)?.corner
  if (corner === undefined) throw new RangeError('only a corner that is made can fail')
  const size = 'radius' in corner.easing ? corner.easing.radius : corner.easing.chamfer
  context.report({
    rule: 'corner-no-room',
    severity: 'error',
    places: [{ source: corner.source }],
    facts: { corner: corner.name, why: reason, size: { value: size, unit: 'mm' } },
  })
  return undefined
}
