import { tangentAt } from '../../geometry/measure/along.ts'
import { contourSeparation } from '../../geometry/measure/separation.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { type Line, line } from '../../geometry/shape/segment.ts'
import { endOfStrip, lineOfStrip } from '../../model/strip.ts'
import type { Cut } from '../subject/cut.ts'

/** What runs along a face: a groove or a rebate. */
export function isRun({ feature: { shape } }: Cut): boolean {
  return shape.kind === 'groove' || shape.kind === 'rebate'
}

/** Grooves and rebates cross each other at corners and joints, and run over notches; side by side they do not meet on purpose. */
export function crossOnPurpose(a: Cut, b: Cut): boolean {
  const [first, second] = isRun(a) ? [a, b] : [b, a]
  if (!isRun(first)) return false
  if (second.feature.shape.kind === 'edge-cut') return true
  return isRun(second) && !areParallel(first, second)
}

function areParallel(a: Cut, b: Cut): boolean {
  const [one, other] = [sidesOf(a)[0], sidesOf(b)[0]]
  if (one === undefined || other === undefined) return false
  const [u, v] = [tangentAt(one, 0), tangentAt(other, 0)]
  return Math.abs(u.x * v.y - u.y * v.x) < crossing
}

/** The sine of the least angle at which two runs cross, and do not lie side by side. */
export const crossing = 1 / 2

/** The straight lines that a groove or rebate is worked to along its length. */
function sidesOf({ region }: Cut): readonly Line[] {
  return region.outer.segments.filter((s): s is Line => s.kind === 'line' && s.tag === lineOfStrip)
}

/**
 * How much wood is between the sides of a groove and the edges that it runs beside, in millimetres. Where it runs out
 * there is none at the end of a side, so that many millimetres of it are left aside there.
 */
export function woodBeside(groove: Cut, wood: readonly Region[], aside: number): number {
  const contours = wood.flatMap(({ outer, holes }) => [outer, ...holes])
  const stops = groove.region.outer.segments.filter(s => s.tag === endOfStrip)
  const isStopped = (p: Line['from']) => stops.some(({ from, to }) => from === p || to === p)
  return Math.min(
    ...sidesOf(groove).flatMap(side => {
      const shorter = shortened(side, isStopped(side.from) ? 0 : aside, isStopped(side.to) ? 0 : aside)
      if (shorter === undefined) return []
      return contours.map(c => contourSeparation({ segments: [shorter], closed: false }, c).distance)
    }),
  )
}

function shortened({ from, to }: Line, start: number, end: number): Line | undefined {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  if (length <= start + end) return undefined
  const at = (s: number) => ({
    x: from.x + ((to.x - from.x) * s) / length,
    y: from.y + ((to.y - from.y) * s) / length,
  })
  return line(at(start), at(length - end))
}
