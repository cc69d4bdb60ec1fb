import type { Contour } from '../shape/contour.ts'
import { type Segment, startAngle, sweep } from '../shape/segment.ts'
import { tangentAt } from './along.ts'
import type { SegmentTree } from './segment-tree.ts'

/** Directions from `start` counter-clockwise through `width`, in radians; all of them when `width` is 2π. */
export type Cone = { readonly start: number; readonly width: number }

const everywhere: Cone = { start: 0, width: 2 * Math.PI }

/** Directions are compared after additions of their own; a cone this much too wide only costs time. */
const rounding = 1e-6

/** The directions square to an edge, to its left. */
export function normalCone(s: Segment): Cone {
  if (s.kind === 'line')
    return { start: Math.atan2(s.to.y - s.from.y, s.to.x - s.from.x) + Math.PI / 2, width: 0 }
  const angle = sweep(s)
  // to the left of a counter-clockwise arc is its centre
  return angle > 0
    ? { start: startAngle(s) + Math.PI, width: angle }
    : { start: startAngle(s) + angle, width: -angle }
}

/**
 * The directions that are, to the left, square to the boundary or within its opening at a corner that points
 * to the left: one cone for every node of the tree. `contours` are those of the tree, all closed.
 */
export function nodeCones(tree: SegmentTree, contours: readonly Contour[]): readonly (Cone | undefined)[] {
  const cones: (Cone | undefined)[] = new Array(2 * tree.leaves)
  let edge = 0
  for (const { segments } of contours) {
    segments.forEach((s, i) => {
      const corner = cornerCone(segments.at(i - 1)!, s)
      cones[tree.leaves + edge] = corner === undefined ? normalCone(s) : joinCones(corner, normalCone(s))
      edge++
    })
  }
  for (let node = tree.leaves - 1; node >= 1; node--) {
    const a = cones[2 * node]
    const b = cones[2 * node + 1]
    cones[node] = a === undefined ? b : b === undefined ? a : joinCones(a, b)
  }
  return cones
}

/** Between the normals of two edges at the corner where they meet, when the boundary turns right there. */
function cornerCone(before: Segment, after: Segment): Cone | undefined {
  const u = tangentAt(before, 1)
  const v = tangentAt(after, 0)
  const turn = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y)
  if (!(turn < 0)) return undefined
  return { start: Math.atan2(v.y, v.x) + Math.PI / 2, width: -turn }
}

/** The narrower of the two cones that hold both. */
function joinCones(a: Cone, b: Cone): Cone {
  const fromA = Math.max(a.width, positive(b.start - a.start) + b.width)
  const fromB = Math.max(b.width, positive(a.start - b.start) + a.width)
  const width = Math.min(fromA, fromB)
  if (!(width < 2 * Math.PI)) return everywhere
  return { start: fromA <= fromB ? a.start : b.start, width }
}

/** Whether two cones have a direction in common, or nearly. */
export function conesMeet(a: Cone, b: Cone): boolean {
  return (
    positive(b.start - a.start + rounding) <= a.width + 2 * rounding ||
    positive(a.start - b.start + rounding) <= b.width + 2 * rounding
  )
}

export function opposite(c: Cone): Cone {
  return { start: c.start + Math.PI, width: c.width }
}

/** The directions that lead from a point in one node's box to a point in the other's. */
export function boxDirections({ boxes }: SegmentTree, i: number, j: number): Cone {
  const left = boxes[4 * j]! - boxes[4 * i + 2]!
  const bottom = boxes[4 * j + 1]! - boxes[4 * i + 3]!
  const right = boxes[4 * j + 2]! - boxes[4 * i]!
  const top = boxes[4 * j + 3]! - boxes[4 * i + 1]!
  // the two corners of the box of differences between which it is seen from the origin
  if (left > 0) return seen(bottom < 0 ? left : right, bottom, top > 0 ? left : right, top)
  if (right < 0) return seen(top > 0 ? right : left, top, bottom < 0 ? right : left, bottom)
  if (bottom > 0) return seen(right, bottom, left, bottom)
  if (top < 0) return seen(left, top, right, top)
  return everywhere
}

function seen(firstX: number, firstY: number, lastX: number, lastY: number): Cone {
  const start = Math.atan2(firstY, firstX)
  return { start, width: positive(Math.atan2(lastY, lastX) - start) }
}

/** The same angle from 0 up to 2π. */
function positive(angle: number): number {
  const rest = angle % (2 * Math.PI)
  return rest < 0 ? rest + 2 * Math.PI : rest
}
