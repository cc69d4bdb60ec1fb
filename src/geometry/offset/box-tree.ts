import { float64Array } from '../boolean/memory.ts'
import { type PackedCurve, stride, withinArc } from './packed-curve.ts'

/**
 * Boxes around the segments of a curve and, level by level, around every two neighbours. Segments that follow
 * each other lie side by side, so the order along the curve is all the sorting it takes, and the tree is built
 * in one pass.
 *
 * Box `k` of level `l` is at `boxes[4 * (levels[l] + k)]`: left, bottom, right, top. Its two parts are the
 * boxes 2k and 2k + 1 of the level below; level 0 has a box for every segment.
 */
export type BoxTree = {
  readonly boxes: Float64Array
  /** Where each level begins, and last where all end. */
  readonly levels: readonly number[]
}

/** @param room used for the boxes when it is large enough; what it holds is lost */
export function buildBoxTree(curve: PackedCurve, room: Float64Array): BoxTree {
  const levels = [0]
  let size = curve.count
  let total = size
  while (size > 1) {
    levels.push(total)
    size = (size + 1) >> 1
    total += size
  }
  levels.push(total)
  const boxes = room.length >= 4 * total ? room.subarray(0, 4 * total) : float64Array(curve.memory, 4 * total)
  for (let k = 0; k < curve.count; k++) putSegmentBox(curve.data, k * stride, boxes, 4 * k)
  for (let l = 1; l + 1 < levels.length; l++) {
    const below = levels[l - 1]!
    const here = levels[l]!
    const count = levels[l + 1]! - here
    const countBelow = here - below
    for (let k = 0; k < count; k++) {
      const a = 4 * (below + 2 * k)
      const b = 2 * k + 1 < countBelow ? a + 4 : a
      const to = 4 * (here + k)
      boxes[to] = Math.min(boxes[a]!, boxes[b]!)
      boxes[to + 1] = Math.min(boxes[a + 1]!, boxes[b + 1]!)
      boxes[to + 2] = Math.max(boxes[a + 2]!, boxes[b + 2]!)
      boxes[to + 3] = Math.max(boxes[a + 3]!, boxes[b + 3]!)
    }
  }
  return { boxes, levels }
}

function putSegmentBox(data: Float64Array, at: number, boxes: Float64Array, to: number): void {
  const x0 = data[at]!
  const y0 = data[at + 1]!
  const x1 = data[at + 2]!
  const y1 = data[at + 3]!
  let left = Math.min(x0, x1)
  let right = Math.max(x0, x1)
  let bottom = Math.min(y0, y1)
  let top = Math.max(y0, y1)
  const turn = data[at + 7]!
  if (turn !== 0) {
    const cx = data[at + 4]!
    const cy = data[at + 5]!
    const r = data[at + 6]!
    const ax = x0 - cx
    const ay = y0 - cy
    const bx = x1 - cx
    const by = y1 - cy
    // a short arc within one quarter of the circle reaches no further than its ends
    const quarter = ax * bx >= 0 && ay * by >= 0 && turn * (ax * by - ay * bx) >= 0
    if (!quarter) {
      if (withinArc(turn, ax, ay, bx, by, 1, 0)) right = cx + r
      if (withinArc(turn, ax, ay, bx, by, -1, 0)) left = cx - r
      if (withinArc(turn, ax, ay, bx, by, 0, 1)) top = cy + r
      if (withinArc(turn, ax, ay, bx, by, 0, -1)) bottom = cy - r
    }
  }
  boxes[to] = left
  boxes[to + 1] = bottom
  boxes[to + 2] = right
  boxes[to + 3] = top
}
