import { coincident } from '../../number/tolerance.ts'
import type { Bounds, Region } from './contour.ts'
import { failure, type Outcome, success } from './outcome.ts'
import type { Point } from './point.ts'
import { polygon } from './polygon.ts'
import { arcOf, line, type Segment } from './segment.ts'

/**
 * How a corner is made. `radius`: rounded by a quarter circle of that radius. `chamfer`: cut off by a straight
 * edge that starts that far from the corner along both sides. Millimetres, more than nothing.
 */
export type Corner = 'square' | { readonly radius: number } | { readonly chamfer: number }

/** The four corners of an upright rectangle; also the tags of their arcs and chamfers. */
export type CornerName = 'bottom-left' | 'bottom-right' | 'top-right' | 'top-left'

/** How the corners of a rectangle are made; one that is not named is square. */
export type Corners = { readonly [name in CornerName]?: Corner }

/**
 * An upright rectangle, counter-clockwise from its lower left corner, its edges tagged `bottom`, `right`,
 * `top` and `left`.
 *
 * @throws RangeError when it has no width or no height: a fault of the caller
 */
export function rectangle({ left, bottom, right, top }: Bounds): Region {
  if (!(right - left > coincident && top - bottom > coincident)) {
    throw new RangeError('a rectangle has a width and a height')
  }
  const corners = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ]
  return { outer: polygon(corners, ['bottom', 'right', 'top', 'left']), holes: [] }
}

type Side = {
  readonly tag: string
  readonly length: number
  readonly along: Point
  readonly from: CornerName
  readonly to: CornerName
}

/**
 * A rectangle with rounded or chamfered corners. The edges are tagged as those of {@link rectangle}, a
 * corner's arc or chamfer by the corner's name, `bottom-left` and so on. A side that its corners use up
 * leaves no edge.
 *
 * Fails with reason `corner-size` for a corner that is not a positive number, and with `corners-meet` where
 * the two corners of a side need more than its length.
 */
export function rectangleWithCorners(bounds: Bounds, corners: Corners): Outcome<Region> {
  const fail = (reason: string, facts: Record<string, number | string>) =>
    failure({ operation: 'rectangleWithCorners', reason, facts, input: { bounds, corners } })
  const square = rectangle(bounds).outer.segments
  const sides = sidesOf(bounds)
  for (const { from } of sides) {
    const size = sizeOf(corners[from])
    if (!(size >= 0) || (size === 0 && (corners[from] ?? 'square') !== 'square')) {
      return fail('corner-size', { corner: from, size })
    }
  }
  for (const { tag, length, from, to } of sides) {
    const wanted = sizeOf(corners[from]) + sizeOf(corners[to])
    if (!(wanted <= length + coincident)) return fail('corners-meet', { side: tag, length, wanted })
  }

  const segments: Segment[] = []
  // each side starts where the corner before it left off
  const starts = sides.map((side, i) => moved(square[i]!.from, side.along, sizeOf(corners[side.from])))
  sides.forEach((side, i) => {
    const next = sides[(i + 1) % sides.length]!
    const nextStart = starts[(i + 1) % sides.length]!
    const size = sizeOf(corners[side.to])
    const corner = square[i]!.to
    const usedUp = side.length - sizeOf(corners[side.from]) - size <= coincident
    const end = usedUp ? starts[i]! : size === 0 ? nextStart : moved(corner, side.along, -size)
    if (!usedUp) segments.push(line(starts[i]!, end, side.tag))
    if (size > 0) segments.push(cornerEdge(end, nextStart, corners[side.to]!, corner, side, next))
  })
  return success({ outer: { segments, closed: true }, holes: [] })
}

function cornerEdge(from: Point, to: Point, how: Corner, corner: Point, side: Side, next: Side): Segment {
  if (typeof how === 'string' || 'chamfer' in how) return line(from, to, side.to)
  const radius = how.radius
  const centre = moved(moved(corner, side.along, -radius), next.along, radius)
  return arcOf(from, to, centre, radius, 1, side.to)
}

function sidesOf({ left, bottom, right, top }: Bounds): readonly Side[] {
  const width = right - left
  const height = top - bottom
  return [
    { tag: 'bottom', length: width, along: { x: 1, y: 0 }, from: 'bottom-left', to: 'bottom-right' },
    { tag: 'right', length: height, along: { x: 0, y: 1 }, from: 'bottom-right', to: 'top-right' },
    { tag: 'top', length: width, along: { x: -1, y: 0 }, from: 'top-right', to: 'top-left' },
    { tag: 'left', length: height, along: { x: 0, y: -1 }, from: 'top-left', to: 'bottom-left' },
  ]
}

function sizeOf(corner: Corner = 'square'): number {
  if (corner === 'square') return 0
  return 'radius' in corner ? corner.radius : corner.chamfer
}

function moved(p: Point, along: Point, by: number): Point {
  return by === 0 ? p : { x: p.x + along.x * by, y: p.y + along.y * by }
}
