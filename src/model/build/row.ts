import type { DistanceFrom } from '../../finding/face-name.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { RowPlan } from '../../plan/plan.ts'
import type { Size } from '../size.ts'
import { type CutBuilder, isKnown, missingSizes } from './cut-builder.ts'
import type { FaceFrame } from './face-frame.ts'
import { buildHoles, type Pattern } from './holes.ts'
import { coordinate } from './position.ts'
import { resolvePositive } from './resolve-size.ts'
import type { Site } from './site.ts'

/** Holes in a line: the first at the place given, or the whole row in the middle where it is centred along its own direction. */
export const buildRow: CutBuilder<RowPlan> = (site, cut) => {
  const { run } = cut
  if (run.kind === 'last')
    return buildHoles(site, cut, (frame, at) => asFarAsLast(site, cut, run.last, frame, at))
  const spacing = resolvePositive(site.context, run.spacing, 'the spacing')
  const pattern = (frame: FaceFrame, at: Point): Pattern => {
    const direction = rowDirection(site, run.toward, frame)
    if (direction === undefined || spacing === undefined) return undefined
    return isKnown(spacing) ? spaced(cut, run.toward.value, spacing, direction, frame, at) : { centres: [] }
  }
  return buildHoles(site, cut, pattern, missingSizes({ spacing }))
}

function spaced(
  { at: position, count }: RowPlan,
  toward: DistanceFrom,
  spacing: Size,
  direction: 'along' | 'across',
  frame: FaceFrame,
  at: Point,
): Pattern {
  const centred = position.kind === 'from-sides' && position[direction]?.kind === 'centre'
  const back = centred ? (count.value - 1) / 2 : 0
  const { axis, sign } = frame.ruler(toward)
  // toward a side is against the direction that leads away from it
  const step = -sign * spacing.mm
  return line(count.value, i => ({ ...at, [axis]: at[axis] + step * (i - back) }))
}

/** The first and the last hole are given, the others spread evenly between them. */
function asFarAsLast(
  site: Site,
  { count }: RowPlan,
  last: Extract<RowPlan['run'], { kind: 'last' }>['last'],
  frame: FaceFrame,
  at: Point,
): Pattern {
  const direction = last.along === undefined ? 'across' : 'along'
  const end = coordinate(site, frame, last[direction], frame[direction], 0)
  if (end === undefined) return undefined
  if ('missing' in end) return { missing: [end.missing] }
  const { axis, value } = end
  const step = (value - at[axis]) / (count.value - 1)
  return line(count.value, i => ({ ...at, [axis]: i === count.value - 1 ? value : at[axis] + step * i }))
}

function line(count: number, centre: (i: number) => Point): Pattern {
  return { centres: Array.from({ length: count }, (_, i) => [centre(i), { pattern: 'row' }]) }
}

/** Which of the face's two directions the row runs in. */
function rowDirection(
  { context }: Site,
  toward: Extract<RowPlan['run'], { kind: 'spacing' }>['toward'],
  { along, across }: FaceFrame,
): 'along' | 'across' | undefined {
  if (along.includes(toward.value)) return 'along'
  if (across.includes(toward.value)) return 'across'
  context.report({
    rule: 'row-direction',
    severity: 'error',
    places: [{ source: toward.source }],
    facts: { found: toward.value, allowed: [...along, ...across].join(', ') },
  })
  return undefined
}
