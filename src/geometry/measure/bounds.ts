import type { Bounds, Contour, Region } from '../shape/contour.ts'
import type { Matrix } from '../shape/matrix.ts'
import type { Point } from '../shape/point.ts'
import type { Segment } from '../shape/segment.ts'
import { spans } from '../shape/span.ts'

/** The bounds of nothing: every other bounds swallow them. */
export const noBounds: Bounds = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity }

/** Bounds that grow while what lies in them is gone through, so that not every step makes new ones. */
type Growing = { -readonly [side in keyof Bounds]: number }

/** The smallest upright rectangle around an edge; of an arc, with the outermost points that it reaches. */
export function segmentBounds(s: Segment): Bounds {
  const all: Growing = { ...noBounds }
  takeIn(all, s)
  return all
}

/** The smallest upright rectangle around a contour; {@link noBounds} when it has no edges. */
export function contourBounds(contour: Contour): Bounds {
  return boundsOfContours([contour])
}

/** The smallest upright rectangle around all of some contours; {@link noBounds} for none. */
export function boundsOfContours(contours: readonly Contour[]): Bounds {
  const all: Growing = { ...noBounds }
  for (const { segments } of contours) for (const s of segments) takeIn(all, s)
  return all
}

function takeIn(all: Growing, s: Segment): void {
  const { from, to } = s
  let left = Math.min(from.x, to.x)
  let right = Math.max(from.x, to.x)
  let bottom = Math.min(from.y, to.y)
  let top = Math.max(from.y, to.y)
  if (s.kind === 'arc') {
    const { x, y } = s.centre
    const r = s.radius
    if (x + r > right && spans(s, { x: x + r, y })) right = x + r
    if (x - r < left && spans(s, { x: x - r, y })) left = x - r
    if (y + r > top && spans(s, { x, y: y + r })) top = y + r
    if (y - r < bottom && spans(s, { x, y: y - r })) bottom = y - r
  }
  widen(all, left, right, bottom, top)
}

function widen(all: Growing, left: number, right: number, bottom: number, top: number): void {
  all.left = Math.min(all.left, left)
  all.right = Math.max(all.right, right)
  all.bottom = Math.min(all.bottom, bottom)
  all.top = Math.max(all.top, top)
}

/** The smallest upright rectangle around a region, which is that of its outer contour. */
export function regionBounds(region: Region): Bounds {
  return contourBounds(region.outer)
}

/** The smallest upright rectangle around all `regions`; {@link noBounds} for none. */
export function boundsOfRegions(regions: readonly Region[]): Bounds {
  return boundsOfContours(regions.map(({ outer }) => outer))
}

/** The smallest upright rectangle around all of some rectangles; {@link noBounds} for none. */
export function joinAllBounds(boxes: readonly Bounds[]): Bounds {
  const all: Growing = { ...noBounds }
  for (const { left, right, bottom, top } of boxes) widen(all, left, right, bottom, top)
  return all
}

/** The smallest upright rectangle around both. */
export function joinBounds(a: Bounds, b: Bounds): Bounds {
  return joinAllBounds([a, b])
}

/** The rectangle so many times as large, seen from the origin. */
export function scaleBounds({ left, right, bottom, top }: Bounds, by: number): Bounds {
  return { left: left * by, right: right * by, bottom: bottom * by, top: top * by }
}

/** The rectangle so many millimetres to the right and up. */
export function shiftBounds({ left, right, bottom, top }: Bounds, x: number, y: number): Bounds {
  return { left: left + x, right: right + x, bottom: bottom + y, top: top + y }
}

/** The area that two boxes share, in mm²: 0 where they only touch. */
export function sharedArea(a: Bounds, b: Bounds): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left)
  const height = Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom)
  return width > 0 && height > 0 ? width * height : 0
}

export function middleOfBounds({ left, right, bottom, top }: Bounds): Point {
  return { x: (left + right) / 2, y: (bottom + top) / 2 }
}

/** The smallest upright rectangle around what the map makes of one. */
export function transformBounds({ left, right, bottom, top }: Bounds, { a, b, c, d, e, f }: Matrix): Bounds {
  return {
    left: Math.min(a * left, a * right) + Math.min(c * bottom, c * top) + e,
    right: Math.max(a * left, a * right) + Math.max(c * bottom, c * top) + e,
    bottom: Math.min(b * left, b * right) + Math.min(d * bottom, d * top) + f,
    top: Math.max(b * left, b * right) + Math.max(d * bottom, d * top) + f,
  }
}
