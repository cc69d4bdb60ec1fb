import { float64Array, int32Array } from './memory.ts'
import type { Pack } from './pack.ts'

/**
 * Boxes over boxes of segments, four to one, in the order in which the contours run. A contour is a coherent
 * walk, so its neighbours in number are neighbours in the plane and the boxes need no sorting; only the
 * contours among themselves are put in an order that keeps near ones together.
 */
export type BoxTree = {
  /** Segment numbers in the order of the lowest boxes. */
  readonly order: Int32Array
  /** left, bottom, right, top of every box, level after level, the lowest first. */
  readonly boxes: Float64Array
  readonly levelStart: readonly number[]
  readonly levelCount: readonly number[]
}

const fanOut = 4

/** Below this many contours their order does not pay for sorting them. */
const fewContours = 16

/** @param margin by how much every box is wider all round than its segment, in mm */
export function buildBoxTree(pack: Pack, margin: number): BoxTree {
  const n = pack.segmentCount
  const levelStart: number[] = []
  const levelCount: number[] = []
  let total = 0
  for (let count = n; ; count = Math.ceil(count / fanOut)) {
    levelStart.push(total)
    levelCount.push(count)
    total += count
    if (count <= 1) break
  }
  const boxes = float64Array(pack.memory, 4 * total)
  const order = segmentOrder(pack)
  for (let i = 0; i < n; i++) segmentBox(pack, order[i]!, margin, boxes, 4 * i)
  for (let level = 1; level < levelStart.length; level++) {
    const below = levelStart[level - 1]!
    const belowCount = levelCount[level - 1]!
    for (let i = 0; i < levelCount[level]!; i++) {
      let left = Infinity
      let bottom = Infinity
      let right = -Infinity
      let top = -Infinity
      const end = Math.min(belowCount, (i + 1) * fanOut)
      for (let c = i * fanOut; c < end; c++) {
        const at = 4 * (below + c)
        if (boxes[at]! < left) left = boxes[at]!
        if (boxes[at + 1]! < bottom) bottom = boxes[at + 1]!
        if (boxes[at + 2]! > right) right = boxes[at + 2]!
        if (boxes[at + 3]! > top) top = boxes[at + 3]!
      }
      const at = 4 * (levelStart[level]! + i)
      boxes[at] = left
      boxes[at + 1] = bottom
      boxes[at + 2] = right
      boxes[at + 3] = top
    }
  }
  return { order, boxes, levelStart, levelCount }
}

/** Visits every pair of different segments whose boxes meet. */
export function visitPairs(tree: BoxTree, visit: (i: number, j: number) => void): void {
  const { order, boxes, levelStart, levelCount } = tree

  const within = (level: number, node: number): void => {
    const below = level - 1
    const start = levelStart[below]!
    const from = node * fanOut
    const to = Math.min(levelCount[below]!, from + fanOut)
    for (let i = from; i < to; i++) {
      if (below > 0) within(below, i)
      const at = 4 * (start + i)
      const l = boxes[at]!
      const d = boxes[at + 1]!
      const r = boxes[at + 2]!
      const u = boxes[at + 3]!
      for (let j = i + 1; j < to; j++) {
        const bt = 4 * (start + j)
        if (l <= boxes[bt + 2]! && boxes[bt]! <= r && d <= boxes[bt + 3]! && boxes[bt + 1]! <= u) {
          if (below === 0) visit(order[i]!, order[j]!)
          else across(below, i, j)
        }
      }
    }
  }

  /** Pairs of one segment under node a and one under node b, two different nodes of a level above the lowest. */
  const across = (level: number, a: number, b: number): void => {
    const below = level - 1
    const start = levelStart[below]!
    const count = levelCount[below]!
    const toA = Math.min(count, (a + 1) * fanOut)
    const toB = Math.min(count, (b + 1) * fanOut)
    const other = 4 * (levelStart[level]! + b)
    const left = boxes[other]!
    const bottom = boxes[other + 1]!
    const right = boxes[other + 2]!
    const top = boxes[other + 3]!
    for (let i = a * fanOut; i < toA; i++) {
      const at = 4 * (start + i)
      const l = boxes[at]!
      const d = boxes[at + 1]!
      const r = boxes[at + 2]!
      const u = boxes[at + 3]!
      if (l > right || r < left || d > top || u < bottom) continue
      for (let j = b * fanOut; j < toB; j++) {
        const bt = 4 * (start + j)
        if (l <= boxes[bt + 2]! && boxes[bt]! <= r && d <= boxes[bt + 3]! && boxes[bt + 1]! <= u) {
          if (below === 0) visit(order[i]!, order[j]!)
          else across(below, i, j)
        }
      }
    }
  }

  if (levelStart.length > 1) within(levelStart.length - 1, 0)
}

/** A stretch of a level line, from left to right, in mm. */
export type Stretch = { readonly left: number; readonly right: number }

/** How far the boxes reach to the left and to the right. */
export function widthOf({ boxes, levelStart }: BoxTree): Stretch {
  const root = 4 * levelStart[levelStart.length - 1]!
  return { left: boxes[root]!, right: boxes[root + 2]! }
}

/** Visits every segment whose box meets a stretch of the level line at `y`. */
export function visitLevel(
  tree: BoxTree,
  y: number,
  { left, right }: Stretch,
  visit: (segment: number) => void,
): void {
  const { order, boxes, levelStart, levelCount } = tree
  const down = (level: number, node: number): void => {
    const at = 4 * (levelStart[level]! + node)
    if (boxes[at + 1]! > y || boxes[at + 3]! < y || boxes[at]! > right || boxes[at + 2]! < left) return
    if (level === 0) {
      visit(order[node]!)
      return
    }
    const to = Math.min(levelCount[level - 1]!, (node + 1) * fanOut)
    for (let i = node * fanOut; i < to; i++) down(level - 1, i)
  }
  if (levelCount[0]! > 0) down(levelStart.length - 1, 0)
}

function segmentBox(pack: Pack, s: number, margin: number, boxes: Float64Array, at: number): void {
  const { x, y } = pack
  const a = pack.from[s]!
  const b = pack.to[s]!
  const ax = x[a]!
  const ay = y[a]!
  const bx = x[b]!
  const by = y[b]!
  let left = Math.min(ax, bx)
  let right = Math.max(ax, bx)
  let bottom = Math.min(ay, by)
  let top = Math.max(ay, by)
  const r = pack.radius[s]!
  if (r > 0) {
    const cx = pack.centreX[s]!
    const cy = pack.centreY[s]!
    // the arc reaches an outermost point of its circle when its ends lie on the two sides of that point
    const t = pack.turn[s]!
    const ux = t * (ax - cx)
    const uy = t * (ay - cy)
    const vx = t * (bx - cx)
    const vy = t * (by - cy)
    if (uy < 0 && vy > 0) right = Math.max(right, cx + r)
    if (uy > 0 && vy < 0) left = Math.min(left, cx - r)
    if (ux > 0 && vx < 0) top = Math.max(top, cy + r)
    if (ux < 0 && vx > 0) bottom = Math.min(bottom, cy - r)
  }
  boxes[at] = left - margin
  boxes[at + 1] = bottom - margin
  boxes[at + 2] = right + margin
  boxes[at + 3] = top + margin
}

function segmentOrder(pack: Pack): Int32Array {
  const n = pack.segmentCount
  const order = int32Array(pack.memory, n)
  const starts = pack.contourStart
  if (starts.length <= fewContours) {
    for (let i = 0; i < n; i++) order[i] = i
    return order
  }
  const { x, y } = pack
  let left = Infinity
  let bottom = Infinity
  let right = -Infinity
  let top = -Infinity
  const middleX = new Float64Array(starts.length)
  const middleY = new Float64Array(starts.length)
  for (let c = 0; c < starts.length; c++) {
    const from = starts[c]!
    const to = starts[c + 1] ?? n
    if (from === to) continue
    let l = Infinity
    let b = Infinity
    let r = -Infinity
    let t = -Infinity
    for (let s = from; s < to; s++) {
      const v = pack.from[s]!
      if (x[v]! < l) l = x[v]!
      if (x[v]! > r) r = x[v]!
      if (y[v]! < b) b = y[v]!
      if (y[v]! > t) t = y[v]!
    }
    middleX[c] = (l + r) / 2
    middleY[c] = (b + t) / 2
    if (l < left) left = l
    if (b < bottom) bottom = b
    if (r > right) right = r
    if (t > top) top = t
  }
  // Z order: the bits of x and y, interleaved
  const cells = 0xffff
  const scaleX = right > left ? cells / (right - left) : 0
  const scaleY = top > bottom ? cells / (top - bottom) : 0
  const code = new Float64Array(starts.length)
  for (let c = 0; c < starts.length; c++) {
    code[c] = spread((middleX[c]! - left) * scaleX) + 2 * spread((middleY[c]! - bottom) * scaleY)
  }
  const contours = Array.from(starts, (_, c) => c).sort((a, b) => code[a]! - code[b]! || a - b)
  let at = 0
  for (const c of contours) {
    const to = starts[c + 1] ?? n
    for (let s = starts[c]!; s < to; s++) order[at++] = s
  }
  return order
}

/** Puts a zero between the bits of a number below 2^16. */
function spread(value: number): number {
  let v = value & 0xffff
  v = (v | (v << 8)) & 0x00ff00ff
  v = (v | (v << 4)) & 0x0f0f0f0f
  v = (v | (v << 2)) & 0x33333333
  v = (v | (v << 1)) & 0x55555555
  return v
}
