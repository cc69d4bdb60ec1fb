import { float64Array, int8Array, int32Array, type Memory } from '../boolean/memory.ts'

/**
 * Closed chains of lines and arcs in flat arrays, for the loops that have to be fast. Segment `k` takes
 * `stride` numbers of `data` from `k * stride` on:
 *
 *     0 x, 1 y of its start   2 x, 3 y of its end
 *     line: 4 x, 5 y of its direction (unit)   6 its length   7 zero
 *     arc:  4 x, 5 y of its centre             6 its radius   7 its turn, 1 counter-clockwise, −1 clockwise
 *
 * The end of a segment and the start of `next` of it are the same two numbers.
 */
export type PackedCurve = {
  readonly memory: Memory
  count: number
  data: Float64Array
  /** The segment that follows; the last of a chain leads to its first. */
  next: Int32Array
  /** Which edge of the input a segment comes from. */
  source: Int32Array
  role: Int8Array
  /** 1: tangent to the segment before it by construction, so the two meet nowhere else. */
  smooth: Int8Array
  /** The first segment of every chain. */
  readonly chains: number[]
}

export const stride = 8

/** A segment's part in the offset: the offset of an edge, or something that fills a corner or an end. */
export const roleEdge = 0
export const roleJoin = 1

/** @param memory where a run has begun */
export function emptyCurve(memory: Memory, capacity: number): PackedCurve {
  return {
    memory,
    count: 0,
    data: float64Array(memory, capacity * stride),
    next: int32Array(memory, capacity),
    source: int32Array(memory, capacity),
    role: int8Array(memory, capacity),
    smooth: int8Array(memory, capacity),
    chains: [],
  }
}

function grow(curve: PackedCurve): void {
  const { memory } = curve
  const capacity = Math.max(16, 2 * curve.next.length)
  const enlarge = <A extends Float64Array | Int32Array | Int8Array>(bigger: A, old: A): A => {
    bigger.set(old)
    return bigger
  }
  curve.data = enlarge(float64Array(memory, capacity * stride), curve.data)
  curve.next = enlarge(int32Array(memory, capacity), curve.next)
  curve.source = enlarge(int32Array(memory, capacity), curve.source)
  curve.role = enlarge(int8Array(memory, capacity), curve.role)
  curve.smooth = enlarge(int8Array(memory, capacity), curve.smooth)
}

export function appendLine(
  curve: PackedCurve,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  source: number,
  role: number,
  smooth: number,
): void {
  const k = curve.count++
  if (k >= curve.next.length) grow(curve)
  const data = curve.data
  const at = k * stride
  const dx = x1 - x0
  const dy = y1 - y0
  const length = Math.sqrt(dx * dx + dy * dy)
  data[at] = x0
  data[at + 1] = y0
  data[at + 2] = x1
  data[at + 3] = y1
  data[at + 4] = dx / length
  data[at + 5] = dy / length
  data[at + 6] = length
  data[at + 7] = 0
  curve.next[k] = k + 1
  curve.source[k] = source
  curve.role[k] = role
  curve.smooth[k] = smooth
}

export function appendArc(
  curve: PackedCurve,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  cx: number,
  cy: number,
  radius: number,
  turn: number,
  source: number,
  role: number,
  smooth: number,
): void {
  const k = curve.count++
  if (k >= curve.next.length) grow(curve)
  const data = curve.data
  const at = k * stride
  data[at] = x0
  data[at + 1] = y0
  data[at + 2] = x1
  data[at + 3] = y1
  data[at + 4] = cx
  data[at + 5] = cy
  data[at + 6] = radius
  data[at + 7] = turn
  curve.next[k] = k + 1
  curve.source[k] = source
  curve.role[k] = role
  curve.smooth[k] = smooth
}

/**
 * Whether a direction from an arc's centre lies within the arc, its ends included. `a` and `b` lead from the
 * centre to the arc's start and end, `p` is the direction asked about; lengths do not matter.
 */
export function withinArc(
  turn: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  px: number,
  py: number,
): boolean {
  const afterStart = turn * (ax * py - ay * px) >= 0
  const beforeEnd = turn * (px * by - py * bx) >= 0
  const atMostHalf = turn * (ax * by - ay * bx) >= 0
  return atMostHalf ? afterStart && beforeEnd : afterStart || beforeEnd
}

/** The angle from `a` to `b` in the sense of `turn`, in radians, from 0 up to 2π. */
export function angleAlong(turn: number, ax: number, ay: number, bx: number, by: number): number {
  const angle = turn * Math.atan2(ax * by - ay * bx, ax * bx + ay * by)
  return angle < 0 ? angle + 2 * Math.PI : angle
}
