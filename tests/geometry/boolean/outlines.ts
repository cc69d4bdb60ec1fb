/** Outlines of one family each, for the tests, the fuzzing and the benchmark of the kernel. */

import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { arc, line, type Segment } from '../../../src/geometry/shape/segment.ts'

export function closed(segments: readonly Segment[]): Contour {
  return { segments, closed: true }
}

export function solid(outer: Contour): Region {
  return { outer, holes: [] }
}

function polar(centre: Point, radius: number, angle: number): Point {
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) }
}

/** The pitch of a gear's teeth along its root circle, in mm: the same for every number of teeth. */
const pitch = 6

/** n teeth, each an arc at the tip, a flank, an arc at the root, a flank; the radius grows with n. */
export function gear(teeth: number, centre: Point = { x: 0, y: 0 }): Region {
  const root = (teeth * pitch) / (2 * Math.PI)
  const tip = root + 4
  const step = (2 * Math.PI) / teeth
  const corners = Array.from({ length: teeth }, (_, i) => [
    polar(centre, tip, i * step),
    polar(centre, tip, (i + 0.4) * step),
    polar(centre, root, (i + 0.5) * step),
    polar(centre, root, (i + 0.9) * step),
  ])
  const segments = corners.flatMap((tooth, i): Segment[] => {
    const [a, b, c, d] = tooth as [Point, Point, Point, Point]
    const next = corners[(i + 1) % teeth]![0]!
    return [arc(a, b, centre, 1), line(b, c), arc(c, d, centre, 1), line(d, next)]
  })
  return solid(closed(segments))
}

/** A back with n long thin teeth: 4n + 2 straight edges. */
export function comb(teeth: number, length: number, corner: Point = { x: 0, y: 0 }): Region {
  const { x, y } = corner
  const points: Point[] = [
    { x, y: y - 5 },
    { x: x + 2 * teeth, y: y - 5 },
  ]
  for (let i = teeth - 1; i >= 0; i--) {
    points.push({ x: x + 2 * i + 2, y }, { x: x + 2 * i + 1.6, y: y + length })
    points.push({ x: x + 2 * i + 0.4, y: y + length }, { x: x + 2 * i, y })
  }
  return solid(polygon(points))
}

/** Corners at turning angles and any radii: never crosses itself. `radiusAt` gives the radius of corner i. */
export function star(
  corners: number,
  radiusAt: (i: number) => number,
  centre: Point = { x: 0, y: 0 },
): Region {
  const points = Array.from({ length: corners }, (_, i) =>
    polar(centre, radiusAt(i), (2 * Math.PI * i) / corners),
  )
  return solid(polygon(points))
}

/** A band of half circles that winds outward: the width of the band is a part `share` of its spacing. */
export function spiral(
  halfTurns: number,
  spacing: number,
  share: number,
  centre: Point = { x: 0, y: 0 },
): Region {
  const { x, y } = centre
  // half circles with centres at x and x + spacing / 2 in turn, radius growing by half the spacing
  const side = (inset: number): Point[] =>
    Array.from({ length: halfTurns + 1 }, (_, k) => {
      const reach = (Math.floor((k + 1) / 2) + 1) * spacing + inset
      return k % 2 === 0 ? { x: x + reach, y } : { x: x + spacing - reach - (k % 2 === 1 ? 0 : 0), y }
    })
  const outer = side(spacing * share)
  const inner = side(0)
  const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y })
  const segments: Segment[] = []
  for (let k = 0; k < halfTurns; k++) {
    segments.push(arc(outer[k]!, outer[k + 1]!, middle(outer[k]!, outer[k + 1]!), 1))
  }
  segments.push(line(outer[halfTurns]!, inner[halfTurns]!))
  for (let k = halfTurns; k > 0; k--) {
    segments.push(arc(inner[k]!, inner[k - 1]!, middle(inner[k]!, inner[k - 1]!), -1))
  }
  segments.push(line(inner[0]!, outer[0]!))
  return solid(closed(segments))
}

/** What lies between two arcs from a to b, bulging to the right of a → b by the two sagittas, larger first. */
export function crescent(a: Point, b: Point, outerSagitta: number, innerSagitta: number): Region {
  return solid(closed([bow(a, b, outerSagitta), bow(b, a, -innerSagitta)]))
}

/** The arc from a to b that bulges to the right of its chord by a sagitta; negative: to the left; 0: a line. */
export function bow(a: Point, b: Point, sagitta: number): Segment {
  if (sagitta === 0) return line(a, b)
  const dx = b.x - a.x
  const dy = b.y - a.y
  const chord = Math.hypot(dx, dy)
  const radius = (chord * chord) / (8 * sagitta) + sagitta / 2
  const inward = (radius - sagitta) / chord
  const centre = { x: (a.x + b.x) / 2 - inward * dy, y: (a.y + b.y) / 2 + inward * dx }
  return arc(a, b, centre, sagitta > 0 ? 1 : -1)
}

/** A convex or star-shaped outline whose edges are lines and bows. */
export function bowed(points: readonly Point[], sagittaAt: (i: number) => number): Region {
  return solid(closed(points.map((p, i) => bow(p, points[(i + 1) % points.length]!, sagittaAt(i)))))
}
