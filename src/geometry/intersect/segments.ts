import { orientation } from '../../number/predicates.ts'
import { coincident } from '../../number/tolerance.ts'
import { pointAt } from '../measure/along.ts'
import { segmentBounds } from '../measure/bounds.ts'
import { nearestOnSegment } from '../measure/nearest.ts'
import { distance, type Point } from '../shape/point.ts'
import type { Arc, Line, Segment } from '../shape/segment.ts'
import { spans } from '../shape/span.ts'
import { meetCircles, sameCircle } from './circle-circle.ts'
import { meetLineCircle } from './line-circle.ts'
import { placeOn } from './place-on.ts'

/**
 * Where two edges meet. `onFirst` and `onSecond` are shares of the length of each, from 0 at `from` to 1 at `to`.
 *
 * `cross`: they pass through each other between their ends. `touch`: they meet without that, because an end of
 * one lies on the other or because they are tangent. `overlap`: they run along each other from one place to
 * another, in the order of the first edge; where they run in opposite directions, `onSecond` falls.
 */
export type Meeting =
  | {
      readonly kind: 'cross' | 'touch'
      readonly point: Point
      readonly onFirst: number
      readonly onSecond: number
    }
  | {
      readonly kind: 'overlap'
      readonly from: Point
      readonly to: Point
      readonly onFirst: readonly [number, number]
      readonly onSecond: readonly [number, number]
    }

/**
 * Where two edges meet, in the order of the first. An end within `coincident` of the other edge lies on it, and
 * edges that come that near to grazing each other touch; whether two lines cross is otherwise decided by exact
 * signs.
 */
export function meetings(first: Segment, second: Segment): readonly Meeting[] {
  if (apart(first, second)) return []
  const places = meetingPlaces(first, second)
  const found: Meeting[] = []
  for (let k = 0; k < places.length; k++) {
    const here = places[k]!
    const next = places[k + 1]
    if (next !== undefined && runsAlong(first, second, here.onFirst, next.onFirst)) {
      const last = found.at(-1)
      if (last?.kind === 'overlap' && last.to === here.point) {
        found[found.length - 1] = {
          ...last,
          to: next.point,
          onFirst: [last.onFirst[0], next.onFirst],
          onSecond: [last.onSecond[0], next.onSecond],
        }
      } else {
        found.push({
          kind: 'overlap',
          from: here.point,
          to: next.point,
          onFirst: [here.onFirst, next.onFirst],
          onSecond: [here.onSecond, next.onSecond],
        })
      }
      continue
    }
    const last = found.at(-1)
    if (last?.kind === 'overlap' && last.to === here.point) continue
    found.push(here)
  }
  return found
}

type Place = Extract<Meeting, { readonly point: Point }>

function meetingPlaces(first: Segment, second: Segment): Place[] {
  const places: Place[] = []
  const add = (kind: 'cross' | 'touch', point: Point): void => {
    if (places.some(p => distance(p.point, point) <= coincident)) return
    places.push({ kind, point, onFirst: placeOn(first, point), onSecond: placeOn(second, point) })
  }
  for (const end of [first.from, first.to]) {
    if (nearestOnSegment(second, end).distance <= coincident) add('touch', end)
  }
  for (const end of [second.from, second.to]) {
    if (nearestOnSegment(first, end).distance <= coincident) add('touch', end)
  }
  if (first.kind === 'line' && second.kind === 'line') {
    const point = linesCross(first, second)
    if (point !== undefined && places.length === 0) add('cross', point)
  } else {
    const points = curvesMeet(first, second)
    const kind = points.length === 1 ? 'touch' : 'cross'
    for (const point of points) if (between(first, point) && between(second, point)) add(kind, point)
  }
  return places.sort((p, q) => p.onFirst - q.onFirst)
}

/** Where two lines cross between their ends: each has its ends on both sides of the other. */
function linesCross(first: Line, second: Line): Point | undefined {
  const { from: a, to: b } = first
  const { from: c, to: d } = second
  const atC = orientation(a, b, c)
  const atD = orientation(a, b, d)
  if (atC === 0 || atD === 0 || atC > 0 === atD > 0) return undefined
  const atA = orientation(c, d, a)
  const atB = orientation(c, d, b)
  if (atA === 0 || atB === 0 || atA > 0 === atB > 0) return undefined
  const t = atC / (atC - atD)
  return { x: c.x + t * (d.x - c.x), y: c.y + t * (d.y - c.y) }
}

/** Where the endless line or whole circle of one edge meets that of the other, at least one being an arc. */
function curvesMeet(first: Segment, second: Segment): Point[] {
  const out = new Float64Array(4)
  let count = 0
  if (first.kind === 'arc' && second.kind === 'arc') {
    const { centre: c, radius } = first
    const { centre: d } = second
    count = meetCircles(c.x, c.y, radius, d.x, d.y, second.radius, coincident, out)
    if (count === sameCircle) return []
  } else {
    const [line, arc] = first.kind === 'line' ? [first, second as Arc] : [second as Line, first]
    const { from, to } = line
    if (from.x === to.x && from.y === to.y) return []
    const { centre, radius } = arc
    count = meetLineCircle(from.x, from.y, to.x, to.y, centre.x, centre.y, radius, coincident, out)
  }
  return Array.from({ length: count }, (_, k) => ({ x: out[2 * k]!, y: out[2 * k + 1]! }))
}

function between(s: Segment, p: Point): boolean {
  if (s.kind === 'arc') return spans(s, p)
  const place = placeOn(s, p)
  return place > 0 && place < 1
}

/** Whether between two of their meetings the edges stay together: same line or circle, and the middle on both. */
function runsAlong(first: Segment, second: Segment, from: number, to: number): boolean {
  if (first.kind !== second.kind) return false
  return nearestOnSegment(second, pointAt(first, (from + to) / 2)).distance <= coincident
}

function apart(first: Segment, second: Segment): boolean {
  const a = segmentBounds(first)
  const b = segmentBounds(second)
  return (
    a.left > b.right + coincident ||
    b.left > a.right + coincident ||
    a.bottom > b.top + coincident ||
    b.bottom > a.top + coincident
  )
}
