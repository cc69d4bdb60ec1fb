import type { Bounds, Contour, Region } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import type { Segment } from '../shape/segment.ts'
import { spans } from '../shape/span.ts'

/** The bounds of nothing: every other bounds swallow them. */
export const noBounds: Bounds = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity }

/** The smallest upright rectangle around an edge; of an arc, with the outermost points that it reaches. */
export function segmentBounds(s: Segment): Bounds {
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
  return { left, bottom, right, top }
}

/** The smallest upright rectangle around a contour; {@link noBounds} when it has no edges. */
export function contourBounds(contour: Contour): Bounds {
  return contour.segments.reduce((all, s) => joinBounds(all, segmentBounds(s)), noBounds)
}

/** The smallest upright rectangle around a region, which is that of its outer contour. */
export function regionBounds(region: Region): Bounds {
  return contourBounds(region.outer)
}

/** The smallest upright rectangle around all `regions`; {@link noBounds} for none. */
export function boundsOfRegions(regions: readonly Region[]): Bounds {
  return regions.reduce((all, region) => joinBounds(all, regionBounds(region)), noBounds)
}

/** The smallest upright rectangle around both. */
export function joinBounds(a: Bounds, b: Bounds): Bounds {
  return {
    left: Math.min(a.left, b.left),
    bottom: Math.min(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
    top: Math.max(a.top, b.top),
  }
}

/** The rectangle so many times as large, seen from the origin. */
export function scaleBounds({ left, right, bottom, top }: Bounds, by: number): Bounds {
  return { left: left * by, right: right * by, bottom: bottom * by, top: top * by }
}

/** The rectangle so many millimetres to the right and up. */
export function shiftBounds({ left, right, bottom, top }: Bounds, x: number, y: number): Bounds {
  return { left: left + x, right: right + x, bottom: bottom + y, top: top + y }
}

export function middleOfBounds({ left, right, bottom, top }: Bounds): Point {
  return { x: (left + right) / 2, y: (bottom + top) / 2 }
}
