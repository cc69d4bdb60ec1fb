import { compose, type Matrix, quarterTurns, shift, turn } from '../geometry/shape/matrix.ts'
import type { Point } from '../geometry/shape/point.ts'
import type { Measured } from './lay-out.ts'

/** Where a line of text stands: `at` is the point on its base line that `align` names, `angle` is in radians. */
export type TextPlace = {
  readonly at: Point
  readonly align: 'start' | 'middle' | 'end'
  readonly angle: number
}

/** The map from a laid line, which starts at the origin and reads to the right, to its place. */
export function textMatrix(laid: Measured, { at, align, angle }: TextPlace): Matrix {
  const back = { start: 0, middle: laid.width / 2, end: laid.width }[align]
  return compose(compose(shift(-back, 0), exactTurn(angle)), shift(at.x, at.y))
}

/** A turn; one by quarter turns is exact, so that upright lettering has no trace of a slope. */
function exactTurn(angle: number): Matrix {
  const quarters = angle / (Math.PI / 2)
  return Number.isInteger(quarters) ? quarterTurns(quarters) : turn(angle)
}
