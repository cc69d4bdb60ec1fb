import { type Matrix, quarterTurns, turn } from '../geometry/shape/matrix.ts'
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
  const back = align === 'start' ? 0 : align === 'middle' ? laid.width / 2 : laid.width
  const { a, b, c, d } = exactTurn(angle)
  return { a, b, c, d, e: at.x - a * back, f: at.y - b * back }
}

/** A turn; one by quarter turns is exact, so that upright lettering has no trace of a slope. */
function exactTurn(angle: number): Matrix {
  const quarters = angle / (Math.PI / 2)
  return Number.isInteger(quarters) ? quarterTurns(quarters) : turn(angle)
}
