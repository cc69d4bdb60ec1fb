import type { Contour, Region } from '../shape/contour.ts'
import { sweep } from '../shape/segment.ts'

/**
 * The area that a closed contour goes round, in mm²: positive when it runs counter-clockwise, negative
 * clockwise. Arcs count exactly: the polygon of the ends, and for each arc the circular segment between it and
 * its chord. An open contour counts as closed by a straight edge.
 *
 * Source: Green's theorem.
 */
export function signedArea(contour: Contour): number {
  const first = contour.segments[0]
  if (first === undefined) return 0
  // far from the origin the products would lose the digits that matter
  const { x: ox, y: oy } = first.from
  let twice = 0
  for (const s of contour.segments) {
    twice += (s.from.x - ox) * (s.to.y - oy) - (s.to.x - ox) * (s.from.y - oy)
    if (s.kind === 'arc') twice += s.radius * s.radius * angleLessSine(sweep(s))
  }
  return twice / 2
}

/** The area of a region in mm², its holes taken away; which way the contours run does not matter. */
export function regionArea(region: Region): number {
  return region.holes.reduce(
    (area, hole) => area - Math.abs(signedArea(hole)),
    Math.abs(signedArea(region.outer)),
  )
}

/** Below this the series of nine terms is exact to the last digit, and the difference itself is not. */
const seriesBelow = 1

/** θ − sin θ without the loss of digits that the subtraction has for small angles. */
export function angleLessSine(angle: number): number {
  if (Math.abs(angle) >= seriesBelow) return angle - Math.sin(angle)
  const square = angle * angle
  let term = (angle * square) / 6
  let sum = term
  for (let k = 4; k <= 18; k += 2) {
    term *= -square / (k * (k + 1))
    sum += term
  }
  return sum
}
