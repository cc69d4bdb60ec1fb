import { type FaceName, isSide } from '../../finding/face-name.ts'
import type { Side } from '../../finding/side.ts'
import { leftOf, tangentAt } from '../../geometry/measure/along.ts'
import type { Point, Vector } from '../../geometry/shape/point.ts'
import type { Line, Segment } from '../../geometry/shape/segment.ts'
import { coincident } from '../../number/tolerance.ts'
import { toPart } from '../pose.ts'
import type { Site } from './site.ts'

/** A straight edge of the front, the wood to its left, from one theoretical corner to the other. */
export type EdgeLine = {
  readonly from: Point
  readonly to: Point
  /** The direction it runs in, and the one into the wood; of length 1. */
  readonly along: Vector
  readonly inward: Vector
  /** Whether what runs along the edge runs out of the wood at either end; at an inner corner it does not. */
  readonly open: { readonly from: boolean; readonly to: boolean }
}

/** The edge of the front that an end or edge of the part, or a named one, begins with; none where that is not straight. */
export function edgeLine(site: Site, edge: FaceName): EdgeLine | undefined {
  const { segments } = site.outline.outer
  const at = isSide(edge) ? segmentOfSide(site, edge) : segmentNamed(segments, edge.slice('edge:'.length))
  if (at === undefined) return undefined
  const segment = segments[at] as Line
  const [from, to] = isSide(edge) ? cornersOfSide(site, edge, segment) : cornersOfNamed(site, edge, segment)
  const along = tangentAt(segment, 0)
  const before = segments.at(at - 1)!
  const after = segments[(at + 1) % segments.length]!
  return {
    from,
    to,
    along,
    inward: leftOf(along),
    open: {
      from: turnsLeft(before, segment, before),
      to: turnsLeft(segment, after, after),
    },
  }
}

function segmentNamed(segments: readonly Segment[], name: string): number | undefined {
  const at = segments.findIndex(s => s.kind === 'line' && s.tag === name)
  return at < 0 ? undefined : at
}

/** The edge that bears the side's name, or else the longest that lies on the side of the rectangle round the part. */
function segmentOfSide(site: Site, side: Side): number | undefined {
  const { segments } = site.outline.outer
  const named = segmentNamed(segments, side)
  if (named !== undefined) return named
  const lying = segments.flatMap((s, i) =>
    s.kind === 'line' && liesOn(site, side, s.from) && liesOn(site, side, s.to) ? [{ s, i }] : [],
  )
  const length = ({ s }: (typeof lying)[number]) => Math.hypot(s.to.x - s.from.x, s.to.y - s.from.y)
  return lying.toSorted((a, b) => length(b) - length(a))[0]?.i
}

function liesOn({ extent }: Site, side: Side, { x, y }: Point): boolean {
  const off = { left: x, right: extent.length - x, bottom: y, top: extent.width - y, front: NaN, back: NaN }
  return Math.abs(off[side]) <= coincident
}

/** Of a rectangle its corners as if they were square; of a slanting end or edge its own ends. */
function cornersOfSide(site: Site, side: Side, segment: Line): readonly [Point, Point] {
  const { length, width } = site.extent
  if (segment.tag !== side || !liesOn(site, side, segment.from) || !liesOn(site, side, segment.to)) {
    return [segment.from, segment.to]
  }
  switch (side) {
    case 'bottom':
      return [point(0, 0), point(length, 0)]
    case 'right':
      return [point(length, 0), point(length, width)]
    case 'top':
      return [point(length, width), point(0, width)]
    default:
      return [point(0, width), point(0, 0)]
  }
}

const point = (x: number, y: number): Point => ({ x, y })

function cornersOfNamed(site: Site, edge: FaceName, segment: Line): readonly [Point, Point] {
  const frame = site.frame(edge)
  if (frame === undefined) return [segment.from, segment.to]
  const end = Math.max(frame.ruler('start').start, frame.ruler('end').start)
  return [toPart(frame.pose, { x: 0, y: 0 }), toPart(frame.pose, { x: end, y: 0 })]
}

/** Whether the outline turns toward the wood from one segment to the next, or where it runs on smoothly, along `then`. */
function turnsLeft(first: Segment, second: Segment, then: Segment): boolean {
  const a = tangentAt(first, 1)
  const b = tangentAt(second, 0)
  const turn = a.x * b.y - a.y * b.x
  if (Math.abs(turn) > coincident) return turn > 0
  return then.kind === 'arc' && then.turn === 1
}
