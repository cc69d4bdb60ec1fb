import { coincident } from '../../number/tolerance.ts'
import { circle } from './circle.ts'
import type { Region } from './contour.ts'
import { distance, type Point } from './point.ts'
import { arcOf, line } from './segment.ts'

/**
 * A straight slot with round ends: all points within half of `width` (millimetres) of the stretch between the
 * two centres. Counter-clockwise. Centres that coincide give a circle. Every edge takes `tag`.
 *
 * @throws RangeError when `width` is not a positive number: a fault of the caller
 */
export function slot(from: Point, to: Point, width: number, tag?: string): Region {
  if (!(width > 0 && width < Infinity)) throw new RangeError('a slot has a positive width')
  const radius = width / 2
  const length = distance(from, to)
  if (length <= coincident) return { outer: circle(from, radius, tag), holes: [] }
  const aside = { x: (-(to.y - from.y) / length) * radius, y: ((to.x - from.x) / length) * radius }
  const rightStart = { x: from.x - aside.x, y: from.y - aside.y }
  const rightEnd = { x: to.x - aside.x, y: to.y - aside.y }
  const leftEnd = { x: to.x + aside.x, y: to.y + aside.y }
  const leftStart = { x: from.x + aside.x, y: from.y + aside.y }
  const end = (a: Point, b: Point, centre: Point) => arcOf(a, b, centre, radius, 1, tag)
  const segments = [
    line(rightStart, rightEnd, tag),
    end(rightEnd, leftEnd, to),
    line(leftEnd, leftStart, tag),
    end(leftStart, rightStart, from),
  ]
  return { outer: { segments, closed: true }, holes: [] }
}
