import type { Point } from '../shape/point.ts'
import { type Arc, startAngle, sweep } from '../shape/segment.ts'

/**
 * What lies farthest out in the directions from `start` to `end` (radians, start < end, both from 0 to 2π):
 * a point, or the part of an arc. In the direction φ it reaches out centre·(cos φ, sin φ) + radius.
 */
export type Support = {
  readonly start: number
  readonly end: number
  readonly centre: Point
  readonly radius: number
  readonly arc?: Arc
}

export const fullTurn = 2 * Math.PI

/** The same angle from 0 up to 2π. */
export function normalised(angle: number): number {
  const rest = angle % fullTurn
  return rest < 0 ? rest + fullTurn : rest
}

export function direction(angle: number): Point {
  return { x: Math.cos(angle), y: Math.sin(angle) }
}

/** How far out a support reaches in a direction, in millimetres from the origin. */
export function reach({ centre, radius }: Pick<Support, 'centre' | 'radius'>, angle: number): number {
  return centre.x * Math.cos(angle) + centre.y * Math.sin(angle) + radius
}

/** An arc as supports: where it goes through +x it is taken apart. */
export function arcSupports(a: Arc): readonly Support[] {
  const angle = sweep(a)
  const start = normalised(angle > 0 ? startAngle(a) : startAngle(a) + angle)
  const end = start + Math.abs(angle)
  const part = { centre: a.centre, radius: a.radius, arc: a }
  if (end <= fullTurn) return [{ ...part, start, end }]
  return [
    { ...part, start: 0, end: end - fullTurn },
    { ...part, start, end: fullTurn },
  ]
}

/** The corners of a convex polygon, counter-clockwise, as supports in the order of their directions. */
export function cornerSupports(corners: readonly Point[]): readonly Support[] {
  const whole = { start: 0, end: fullTurn, radius: 0 }
  if (corners.length === 1) return [{ ...whole, centre: corners[0]! }]
  const normals = corners.map((p, i) => {
    const q = corners[(i + 1) % corners.length]!
    return normalised(Math.atan2(-(q.x - p.x), q.y - p.y))
  })
  return corners
    .flatMap((centre, i): readonly Support[] => {
      const start = normals.at(i - 1)!
      const end = normals[i]!
      if (start <= end) return [{ start, end, centre, radius: 0 }]
      // two edges nearly in line, their directions rounded past each other: nothing is left between them
      if (start - end < Math.PI / 2) return []
      return [
        { start: 0, end, centre, radius: 0 },
        { start, end: fullTurn, centre, radius: 0 },
      ]
    })
    .filter(s => s.end > s.start)
    .sort((a, b) => a.start - b.start)
}

/**
 * Of two lists of supports, each in the order of its directions and perhaps with gaps, what reaches out
 * farther in every direction.
 */
export function outermost(a: readonly Support[], b: readonly Support[]): readonly Support[] {
  const merged: Support[] = []
  const put = (s: Support, start: number, end: number) => {
    const last = merged.at(-1)
    if (last !== undefined && last.end === start && same(last, s))
      merged[merged.length - 1] = { ...last, end }
    else merged.push({ ...s, start, end })
  }
  const bounds = [...a, ...b].flatMap(s => [s.start, s.end]).sort((x, y) => x - y)
  let i = 0
  let j = 0
  for (let k = 0; k + 1 < bounds.length; k++) {
    const start = bounds[k]!
    const end = bounds[k + 1]!
    if (start === end) continue
    while (i < a.length && a[i]!.end <= start) i++
    while (j < b.length && b[j]!.end <= start) j++
    const p = i < a.length && a[i]!.start <= start ? a[i] : undefined
    const q = j < b.length && b[j]!.start <= start ? b[j] : undefined
    if (p === undefined || q === undefined) {
      const only = p ?? q
      if (only !== undefined) put(only, start, end)
      continue
    }
    const cuts = [start, ...equalDirections(p, q, start, end), end]
    for (let m = 0; m + 1 < cuts.length; m++) {
      const middle = (cuts[m]! + cuts[m + 1]!) / 2
      put(reach(p, middle) >= reach(q, middle) ? p : q, cuts[m]!, cuts[m + 1]!)
    }
  }
  return merged
}

function same(a: Support, b: Support): boolean {
  return a.centre === b.centre && a.radius === b.radius && a.arc === b.arc
}

/** The directions between two others in which two supports reach equally far, in order. */
function equalDirections(p: Support, q: Support, start: number, end: number): readonly number[] {
  const dx = p.centre.x - q.centre.x
  const dy = p.centre.y - q.centre.y
  const ratio = (q.radius - p.radius) / Math.hypot(dx, dy)
  if (!(Math.abs(ratio) <= 1)) return []
  const towards = Math.atan2(dy, dx)
  const aside = Math.acos(ratio)
  return [normalised(towards - aside), normalised(towards + aside)]
    .filter(angle => angle > start && angle < end)
    .sort((x, y) => x - y)
}
