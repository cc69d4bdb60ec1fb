import type { Bounds } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import type { ReadBack } from '../readback/read-back.ts'

/** The main lines of scale bars are the only wide lines outside the drawing. */
const wide = 0.35
const sameWidth = 1e-3

type Bar = { readonly from: Point; readonly to: Point }

/**
 * How far the ends of a page's scale bars are from whole inches and whole centimetres, and the bars from straight
 * across and straight along, in millimetres.
 *
 * @throws Error when there are not two bars each way, one of whole inches and one of whole centimetres, that start
 *   at one place
 */
export function barDeviation({ chains }: ReadBack, drawings: readonly Bounds[]): number {
  const bars = chains
    .filter(c => c.paint === 'stroke' && !c.closed && Math.abs(c.width - wide) < sameWidth)
    .filter(c => c.curves.length === 1 && c.curves[0]!.kind === 'line')
    .map(({ curves }): Bar => ({ from: curves[0]!.at(0), to: curves[0]!.at(1) }))
    .filter(({ from, to }) => !drawings.some(box => within(from, box) && within(to, box)))
  const across = bars.filter(({ from, to }) => to.x - from.x > Math.abs(to.y - from.y))
  const along = bars.filter(({ from, to }) => to.y - from.y > Math.abs(to.x - from.x))
  if (bars.length !== 4 || across.length !== 2 || along.length !== 2)
    throw new Error(`the page has ${across.length} scale bars across and ${along.length} along`)
  return Math.max(pairDeviation(across, 'x', 'y'), pairDeviation(along, 'y', 'x'))
}

function pairDeviation(pair: readonly Bar[], run: 'x' | 'y', aside: 'x' | 'y'): number {
  const [first, second] = pair as [Bar, Bar]
  const length = ({ from, to }: Bar): number => to[run] - from[run]
  const slope = ({ from, to }: Bar): number => Math.abs(to[aside] - from[aside])
  const apart = Math.hypot(first.from.x - second.from.x, first.from.y - second.from.y)
  const offWhole = (bar: Bar, unit: number): number => {
    const whole = Math.max(1, Math.round(length(bar) / unit)) * unit
    return Math.abs(length(bar) - whole)
  }
  // which of the two is which is not said by a line
  const inchesFirst = Math.max(offWhole(first, 25.4), offWhole(second, 10))
  const inchesSecond = Math.max(offWhole(first, 10), offWhole(second, 25.4))
  return Math.max(Math.min(inchesFirst, inchesSecond), apart, slope(first), slope(second))
}

function within(p: Point, { left, right, bottom, top }: Bounds): boolean {
  return p.x >= left && p.x <= right && p.y >= bottom && p.y <= top
}
