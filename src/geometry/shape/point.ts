/** A place in the plane, in millimetres, x to the right and y up. */
export type Point = { readonly x: number; readonly y: number }

/** A displacement in millimetres. It has the shape of a point and is not one: only points have a place. */
export type Vector = { readonly x: number; readonly y: number }

/** The point at `x` and `y`, in millimetres. */
export function point(x: number, y: number): Point {
  return { x, y }
}

/** The displacement that leads from `a` to `b`. */
export function between(a: Point, b: Point): Vector {
  return { x: b.x - a.x, y: b.y - a.y }
}

/** How far two points are apart, in millimetres. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y)
}

/** The point halfway between two others. */
export function midpoint(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
}
