import { coincident } from '../../number/tolerance.ts'
import { unit } from '../measure/along.ts'
import { nearestOnSegment } from '../measure/nearest.ts'
import type { Contour } from '../shape/contour.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { between, distance, type Point, type Vector } from '../shape/point.ts'
import { line, type Segment, sweep } from '../shape/segment.ts'
import { biarc } from './biarc.ts'
import { evenPieces } from './biarc-pieces.ts'
import { circleThrough } from './circle-through.ts'

/** A smooth curve: its points and directions (any length but none) at shares from 0 to 1 of some parameter. */
export type Curve = {
  /** The point at a share; millimetres. */
  readonly pointAt: (share: number) => Point
  /** The direction in which the curve runs at a share. */
  readonly directionAt: (share: number) => Vector
}

/** The finest cut of a curve: a curve that needs finer pieces has a cusp or a wild parameter. */
const steps = 4096

/** Places of a piece at which its deviation is measured. */
const samples = 16

/**
 * Between samples a piece's deviation, a wave with few crests, can pass the greatest sample by a little: with
 * sixteen samples by less than this part of it.
 */
const unseen = 0.05

/**
 * A smooth curve as arcs (and lines where it is straight), each running smoothly into the next, nowhere
 * farther than `maxDeviation` (millimetres) from the curve. Its ends and the directions there are kept.
 *
 * Fails with reason `too-fine` when the curve cannot be followed with pieces of 1/4096 of its parameter: it has
 * a cusp, stands still, or the deviation is too small for it.
 */
export function biarcsOfCurve(curve: Curve, maxDeviation: number): Outcome<Contour> {
  // of all the steps few are asked about, and those again and again
  const points: Point[] = []
  const directions: Vector[] = []
  const at = (i: number): Point => {
    points[i] ??= curve.pointAt(i / steps)
    return points[i]
  }
  const ahead = (i: number): Vector => {
    directions[i] ??= unit(curve.directionAt(i / steps))
    return directions[i]
  }
  const pieces = evenPieces(steps, maxDeviation, (i, j, deviation) => {
    const pair = biarc(at(i), ahead(i), at(j), ahead(j))
    if (pair === undefined || !pair.every(isModest)) return undefined
    const allowed = deviation * (1 - unseen)
    for (let k = 1; k < samples; k++) {
      const p = curve.pointAt((i + ((j - i) * k) / samples) / steps)
      if (!(awayFrom(pair, p) <= allowed)) return undefined
    }
    return pair
  })
  if (pieces === undefined) {
    const input = { points: Array.from({ length: steps / 64 + 1 }, (_, i) => at(i * 64)), maxDeviation }
    return failure({ operation: 'biarcsOfCurve', reason: 'too-fine', facts: { maxDeviation }, input })
  }
  return success({ segments: pieces.flat(), closed: false })
}

/**
 * A smooth line of arcs through the points of a smooth curve, in their order: it passes every point within
 * `maxDeviation` (millimetres), some of them exactly. Its direction at a point is that of the circle through
 * the point and its neighbours, so points that lie on a circle give that circle. A corner is rounded: give its
 * sides one by one. Points that coincide with the one before count once.
 *
 * Fails with reason `few-points` for fewer than two (three when `closed`), and with `too-fine` should no way
 * be found between two neighbours.
 */
export function biarcsThrough(
  given: readonly Point[],
  maxDeviation: number,
  closed = false,
): Outcome<Contour> {
  const fail = (reason: string, facts: Record<string, number>) =>
    failure({ operation: 'biarcsThrough', reason, facts, input: { points: given, maxDeviation, closed } })
  const points = given.filter((p, i) => {
    const before = i > 0 ? given[i - 1] : closed ? given.at(-1) : undefined
    return before === undefined || distance(before, p) > coincident
  })
  const count = points.length
  if (count < (closed ? 3 : 2)) return fail('few-points', { points: count })
  const directions = points.map((_, i) => directionAt(points, i, closed))
  const at = (i: number) => points[i % count]!
  const pieces = evenPieces(closed ? count : count - 1, maxDeviation, (i, j, deviation) => {
    const pair = biarc(at(i), directions[i % count]!, at(j), directions[j % count]!)
    if (pair === undefined) return j === i + 1 ? [line(at(i), at(j))] : undefined
    if (j > i + 1 && !pair.every(isModest)) return undefined
    for (let k = i + 1; k < j; k++) if (!(awayFrom(pair, at(k)) <= deviation)) return undefined
    return pair
  })
  if (pieces === undefined) return fail('too-fine', { maxDeviation })
  return success({ segments: pieces.flat(), closed })
}

/** An arc of more than half a turn does not follow a curve, though it may pass its points. */
function isModest(s: Segment): boolean {
  return s.kind === 'line' || Math.abs(sweep(s)) <= Math.PI
}

function awayFrom(pair: readonly Segment[], p: Point): number {
  return pair.reduce((least, s) => Math.min(least, nearestOnSegment(s, p).distance), Infinity)
}

/** The direction, of length 1, of the circle through a point and its neighbours; at an open end, its two next. */
function directionAt(points: readonly Point[], i: number, closed: boolean): Vector {
  const count = points.length
  const middle = closed ? i : Math.min(Math.max(i, 1), count - 2)
  if (count < 3) return unit(between(points[0]!, points[1]!))
  const before = points[(middle + count - 1) % count]!
  const after = points[(middle + 1) % count]!
  const circle = circleThrough(before, points[middle]!, after)
  if (!circle.ok) return unit(between(before, after))
  const { centre } = circle.value
  const p = points[i]!
  const square = { x: -(p.y - centre.y), y: p.x - centre.x }
  // of its two ways the one that leads from the point before to the one after
  const a = between(before, points[middle]!)
  const b = between(before, after)
  return unit(a.x * b.y - a.y * b.x > 0 ? square : { x: -square.x, y: -square.y })
}
