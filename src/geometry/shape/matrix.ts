import type { Point } from './point.ts'

/**
 * An affine map of the plane: x' = a·x + c·y + e, y' = b·x + d·y + f, the order in which SVG and PDF write
 * one. e and f are in millimetres.
 */
export type Matrix = {
  readonly a: number
  readonly b: number
  readonly c: number
  readonly d: number
  readonly e: number
  readonly f: number
}

/** The map that leaves everything where it is. */
export const identity: Matrix = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 }

/** A shift by `x` to the right and `y` up, in millimetres. */
export function shift(x: number, y: number): Matrix {
  return { a: 1, b: 0, c: 0, d: 1, e: x, f: y }
}

/** A stretch about the origin by the factor `x` across and `y` along; negative factors mirror. */
export function scale(x: number, y: number = x): Matrix {
  return { a: x, b: 0, c: 0, d: y, e: 0, f: 0 }
}

/** A turn by `angle` radians about the origin, positive counter-clockwise. */
export function turn(angle: number): Matrix {
  const cos = Math.cos(angle)
  const sin = Math.sin(angle)
  return { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 }
}

/** `count` quarter turns counter-clockwise about the origin, exact. */
export function quarterTurns(count: number): Matrix {
  return quarters[((count % 4) + 4) % 4]!
}

const quarters: readonly Matrix[] = [
  identity,
  { a: 0, b: 1, c: -1, d: 0, e: 0, f: 0 },
  { a: -1, b: 0, c: 0, d: -1, e: 0, f: 0 },
  { a: 0, b: -1, c: 1, d: 0, e: 0, f: 0 },
]

/** Left for right about the upright line at `x`. */
export function mirrorAcross(x: number): Matrix {
  return { a: -1, b: 0, c: 0, d: 1, e: 2 * x, f: 0 }
}

/** The map that does `first`, then `then`. */
export function compose(first: Matrix, then: Matrix): Matrix {
  return {
    a: then.a * first.a + then.c * first.b,
    b: then.b * first.a + then.d * first.b,
    c: then.a * first.c + then.c * first.d,
    d: then.b * first.c + then.d * first.d,
    e: then.a * first.e + then.c * first.f + then.e,
    f: then.b * first.e + then.d * first.f + then.f,
  }
}

/** Where the map brings a point. */
export function apply(m: Matrix, p: Point): Point {
  return { x: m.a * p.x + m.c * p.y + m.e, y: m.b * p.x + m.d * p.y + m.f }
}
