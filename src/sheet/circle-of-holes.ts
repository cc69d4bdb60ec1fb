import type { Point } from '../geometry/shape/point.ts'
import type { Placed } from '../model/feature.ts'
import { coincident } from '../number/tolerance.ts'

/** The middle of a circle of holes, which is marked before they are. */
export function circleOf(
  holes: readonly Placed[],
): { readonly centre: Point; readonly radius: number } | undefined {
  const centres = holes.flatMap(({ shape }) => (shape.kind === 'bore' ? [shape.centre] : []))
  if (centres.length < 3 || centres.length !== holes.length) return undefined
  const mean = (axis: 'x' | 'y'): number => centres.reduce((sum, c) => sum + c[axis], 0) / centres.length
  const centre = { x: mean('x'), y: mean('y') }
  const radii = centres.map(c => Math.hypot(c.x - centre.x, c.y - centre.y))
  const radius = radii[0]!
  return radii.every(r => Math.abs(r - radius) < 2 * coincident) && radius > coincident
    ? { centre, radius }
    : undefined
}

/** The unit vector from the middle of the circle of holes that a hole is one of to that hole; `others` may hold more than its circle. */
export function outwardOf({ cut, row, shape }: Placed, others: readonly Placed[]): Point | undefined {
  if (row?.pattern !== 'circle' || shape.kind !== 'bore') return undefined
  const found = circleOf(others.filter(other => other.cut === cut))
  if (found === undefined) return undefined
  const { centre, radius } = found
  return { x: (shape.centre.x - centre.x) / radius, y: (shape.centre.y - centre.y) / radius }
}
