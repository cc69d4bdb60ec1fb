import { orientation } from '../../number/predicates.ts'
import { coincident } from '../../number/tolerance.ts'
import { leftOf, unit } from '../measure/along.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { between, distance, midpoint, type Point, type Vector } from '../shape/point.ts'
import { type Arc, arcOf } from '../shape/segment.ts'
import { circleThrough } from './circle-through.ts'

/**
 * The arc over a chord by its height. `sagitta` in millimetres: the distance from the middle of the chord to
 * the middle of the arc; positive turns counter-clockwise, so the arc bulges to the right of the way from
 * `from` to `to`, negative clockwise, to the left. More than half the chord gives more than half a circle.
 *
 * Fails with reason `no-chord` when the ends coincide, and with `flat` when the sagitta is within `coincident`
 * of nothing: that is a line.
 *
 * Source: r = (c²/4 + h²)/2h for chord c and sagitta h.
 */
export function arcBySagitta(from: Point, to: Point, sagitta: number): Outcome<Arc> {
  const fail = refuse('arcBySagitta', { from, to, sagitta })
  const chord = distance(from, to)
  if (!(chord > coincident)) return fail('no-chord', { chord })
  if (!(Math.abs(sagitta) > coincident)) return fail('flat', { sagitta })
  // the centre lies this far to the left of the chord's middle
  const aside = (chord * chord) / 8 / sagitta - sagitta / 2
  return success(over(from, to, aside, sagitta > 0 ? 1 : -1))
}

/**
 * The arc of at most half a circle between two points, by its radius in millimetres. `turn` 1 runs
 * counter-clockwise, −1 clockwise. A radius that falls short of half the chord by no more than `coincident`
 * makes a half circle.
 *
 * Fails with reason `no-chord` when the ends coincide, and with `radius-too-small` (`least` says what would
 * do) when the radius is under half the chord.
 */
export function arcByRadius(from: Point, to: Point, radius: number, turn: 1 | -1): Outcome<Arc> {
  const fail = refuse('arcByRadius', { from, to, radius, turn })
  const chord = distance(from, to)
  if (!(chord > coincident)) return fail('no-chord', { chord })
  const half = chord / 2
  if (!(radius >= half - coincident)) return fail('radius-too-small', { radius, least: half })
  const aside = Math.sqrt(Math.max(0, (radius - half) * (radius + half)))
  return success({ ...over(from, to, turn * aside, turn), radius: Math.max(radius, half) })
}

/**
 * The arc between two points that turns by `angle` radians on its way: positive counter-clockwise, negative
 * clockwise, less than a full turn.
 *
 * Fails with reason `no-chord` when the ends coincide, with `flat` for no turn or one that leaves the chord by
 * no more than `coincident`, and with `full-turn` for 2π and more.
 */
export function arcByBend(from: Point, to: Point, angle: number): Outcome<Arc> {
  const fail = refuse('arcByBend', { from, to, angle })
  const chord = distance(from, to)
  if (!(chord > coincident)) return fail('no-chord', { chord })
  if (!(Math.abs(angle) < 2 * Math.PI)) return fail('full-turn', { angle })
  const sagitta = (chord / 2) * Math.tan(angle / 4)
  if (!(Math.abs(sagitta) > coincident)) return fail('flat', { angle, sagitta })
  const aside = chord / 2 / Math.tan(angle / 2)
  return success(over(from, to, aside, angle > 0 ? 1 : -1))
}

/**
 * The arc from `from` to `to` on the way through `via`.
 *
 * Fails with reason `in-line` when the three lie in one line, or bend so little that the arc would leave its
 * chord by no more than `coincident`; with `no-chord` when two of them coincide.
 */
export function arcThrough(from: Point, via: Point, to: Point): Outcome<Arc> {
  const fail = refuse('arcThrough', { from, via, to })
  const circle = circleThrough(from, via, to)
  if (!circle.ok) return fail(circle.fault.reason, circle.fault.facts)
  const turn = orientation(from, via, to) > 0 ? 1 : -1
  return success(arcOf(from, to, circle.value.centre, circle.value.radius, turn))
}

/**
 * The arc that leaves `from` in a direction (a vector of any length) and ends at `to`.
 *
 * Fails with reason `no-chord` when the ends coincide, and with `flat` when the arc would leave its chord by no
 * more than `coincident`, or would have to come back along it.
 */
export function arcByTangent(from: Point, direction: Vector, to: Point): Outcome<Arc> {
  const fail = refuse('arcByTangent', { from, direction, to })
  const chord = between(from, to)
  const square = chord.x * chord.x + chord.y * chord.y
  if (!(square > coincident * coincident)) return fail('no-chord', { chord: Math.sqrt(square) })
  const normal = leftOf(unit(direction))
  const aside = chord.x * normal.x + chord.y * normal.y
  // a flat arc's sagitta is a quarter of this
  if (!(Math.abs(aside) > 4 * coincident)) return fail('flat', { aside })
  const radius = square / (2 * aside)
  const centre = { x: from.x + normal.x * radius, y: from.y + normal.y * radius }
  return success(arcOf(from, to, centre, Math.abs(radius), radius > 0 ? 1 : -1))
}

function refuse(operation: string, input: unknown) {
  return (reason: string, facts: Readonly<Record<string, number | string>>) =>
    failure({ operation, reason, facts, input })
}

/** The arc whose centre lies `aside` to the left of the chord's middle. */
function over(from: Point, to: Point, aside: number, turn: 1 | -1): Arc {
  const chord = distance(from, to)
  const middle = midpoint(from, to)
  const centre = {
    x: middle.x - ((to.y - from.y) / chord) * aside,
    y: middle.y + ((to.x - from.x) / chord) * aside,
  }
  return arcOf(from, to, centre, Math.hypot(chord / 2, aside), turn)
}
