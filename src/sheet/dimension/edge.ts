import type { Point } from '../../geometry/shape/point.ts'

/** A side of a view that dimensions stand beside; `at` is its y where it is level and its x where it is upright. */
export type Edge = { readonly side: 'left' | 'right' | 'top' | 'bottom'; readonly at: number }

export function isLevel({ side }: Edge): boolean {
  return side === 'top' || side === 'bottom'
}

/** The point that lies `along` an edge (the coordinate along it) and `out` millimetres away from the view; inside it, less than nothing. */
export function pointBeside({ side, at }: Edge, along: number, out: number): Point {
  switch (side) {
    case 'bottom':
      return { x: along, y: at - out }
    case 'top':
      return { x: along, y: at + out }
    case 'left':
      return { x: at - out, y: along }
    case 'right':
      return { x: at + out, y: along }
  }
}

/** The coordinate of a point along an edge, and how far out it is. */
export function besideOf(
  { side, at }: Edge,
  { x, y }: Point,
): { readonly along: number; readonly out: number } {
  switch (side) {
    case 'bottom':
      return { along: x, out: at - y }
    case 'top':
      return { along: x, out: y - at }
    case 'left':
      return { along: y, out: at - x }
    case 'right':
      return { along: y, out: x - at }
  }
}
