import type { Bounds } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'

/** One stroke of the pen round a letter; `close` leads back to the last `move`. */
export type OutlineStep =
  | { readonly kind: 'move' | 'line'; readonly to: Point }
  | { readonly kind: 'quadratic'; readonly control: Point; readonly to: Point }
  | { readonly kind: 'cubic'; readonly control1: Point; readonly control2: Point; readonly to: Point }
  | { readonly kind: 'close' }

/** The shape of a letter, filled where it winds around more or less than zero times; in ems, y up from the base line. */
export type Outline = readonly OutlineStep[]

/** The outline under x' = scale·x + dx, y' = scale·y + dy. */
export function placeOutline(outline: Outline, scale: number, dx: number, dy: number): Outline {
  const move = (p: Point): Point => ({ x: scale * p.x + dx, y: scale * p.y + dy })
  return mapOutline(outline, move)
}

/** The outline with every point, on the curve and off it, moved by an affine `move`. */
export function mapOutline(outline: Outline, move: (p: Point) => Point): Outline {
  return outline.map(step => mapStep(step, move))
}

function mapStep(step: OutlineStep, move: (p: Point) => Point): OutlineStep {
  switch (step.kind) {
    case 'move':
    case 'line':
      return { kind: step.kind, to: move(step.to) }
    case 'quadratic':
      return { kind: 'quadratic', control: move(step.control), to: move(step.to) }
    case 'cubic':
      return {
        kind: 'cubic',
        control1: move(step.control1),
        control2: move(step.control2),
        to: move(step.to),
      }
    case 'close':
      return step
  }
}

/**
 * A rectangle that the outline lies in, through its outermost points and handles; undefined for a blank.
 * Letters have points where they are widest, so it is the smallest one for them.
 */
export function outlineBounds(outline: Outline): Bounds | undefined {
  let left = Infinity
  let bottom = Infinity
  let right = -Infinity
  let top = -Infinity
  const take = (p: Point): void => {
    left = Math.min(left, p.x)
    bottom = Math.min(bottom, p.y)
    right = Math.max(right, p.x)
    top = Math.max(top, p.y)
  }
  for (const step of outline) {
    if (step.kind === 'close') continue
    take(step.to)
    if (step.kind === 'quadratic') take(step.control)
    if (step.kind === 'cubic') {
      take(step.control1)
      take(step.control2)
    }
  }
  return left <= right ? { left, bottom, right, top } : undefined
}
