import { coincident } from '../../number/tolerance.ts'
import type { BoxTree } from './box-tree.ts'
import { type PackedCurve, stride } from './packed-curve.ts'

/** What `windingRightOf` returns where the ray from the point runs through something too near to it. */
export const noWinding = Number.NaN

/**
 * The winding number of a curve just beside a point on one of its segments, on the right in the direction of
 * travel. It counts what a ray toward +x crosses: upward +1, downward −1.
 *
 * @param k the segment the point lies on
 * @param upward whether the segment runs up (toward +y) at the point; it must not run level there
 */
export function windingRightOf(
  curve: PackedCurve,
  tree: BoxTree,
  k: number,
  x: number,
  y: number,
  upward: boolean,
): number {
  const ray: Ray = { curve, tree, own: k, x, y, sum: 0, clear: true }
  const top = tree.levels.length - 2
  visit(ray, top, 0)
  if (!ray.clear) return noWinding
  // the ray begins on the +x side of the segment, which is its right when it runs up
  return upward ? ray.sum : ray.sum - 1
}

type Ray = {
  readonly curve: PackedCurve
  readonly tree: BoxTree
  readonly own: number
  readonly x: number
  readonly y: number
  sum: number
  clear: boolean
}

function visit(ray: Ray, level: number, node: number): void {
  const { boxes, levels } = ray.tree
  const at = 4 * (levels[level]! + node)
  if (boxes[at + 1]! > ray.y || boxes[at + 3]! < ray.y || boxes[at + 2]! < ray.x - coincident) return
  if (level === 0) {
    count(ray, node)
    return
  }
  const below = levels[level]! - levels[level - 1]!
  visit(ray, level - 1, 2 * node)
  if (2 * node + 1 < below) visit(ray, level - 1, 2 * node + 1)
}

function count(ray: Ray, k: number): void {
  const { data } = ray.curve
  const at = k * stride
  const y0 = data[at + 1]!
  const y1 = data[at + 3]!
  const turn = data[at + 7]!
  if (turn === 0) {
    if (k === ray.own || y0 > ray.y === y1 > ray.y) return
    const x0 = data[at]!
    hit(ray, k, x0 + ((data[at + 2]! - x0) * (ray.y - y0)) / (y1 - y0), y1 > y0)
    return
  }
  // an arc is monotone from one top or bottom of its circle to the next
  const cx = data[at + 4]!
  const cy = data[at + 5]!
  const r = data[at + 6]!
  const h = ray.y - cy
  const half = Math.sqrt(Math.max(0, (r - h) * (r + h)))
  let x = data[at]! - cx
  let y = y0
  const endX = data[at + 2]! - cx
  let right = x > 0 || (x === 0 && turn * (y0 - cy) < 0)
  const endRight = endX > 0 || (endX === 0 && turn * (y1 - cy) > 0)
  // at most three half circles: the first part, a whole half, the last part
  for (let part = 0; part < 3; part++) {
    const rises = right === turn > 0
    const last = right === endRight && (part > 0 || (rises ? y1 >= y : y1 <= y))
    const to = last ? y1 : rises ? cy + r : cy - r
    if (y > ray.y !== to > ray.y) hit(ray, k, right ? cx + half : cx - half, to > y)
    if (last) return
    y = to
    x = 0
    right = !right
  }
}

function hit(ray: Ray, k: number, x: number, rises: boolean): void {
  const ahead = x - ray.x
  if (Math.abs(ahead) <= coincident) {
    if (k !== ray.own) ray.clear = false
    return
  }
  if (ahead > 0) ray.sum += rises ? 1 : -1
}
