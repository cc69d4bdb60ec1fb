import { orient2d } from 'robust-predicates'

type XY = { readonly x: number; readonly y: number }

/**
 * Which side of the line from `a` to `b` the point `c` lies on; the sign is exact for the points as given.
 * Positive: `c` lies to the left (y up). Zero: the three are in one line. The size is about twice the area of
 * the triangle, in mm².
 *
 * Source: Shewchuk, Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates, 1997.
 */
export function orientation(a: XY, b: XY, c: XY): number {
  // the library counts y downwards, so its sign is turned
  return -orient2d(a.x, a.y, b.x, b.y, c.x, c.y)
}
