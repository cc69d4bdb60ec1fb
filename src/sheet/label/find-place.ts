import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { asFarAsLookedAt } from '../as-far-as-looked-at.ts'
import { grown, isClear } from './clear-space.ts'
import type { Obstacles } from './obstacles.ts'

/** Width and height of what is to be placed, in millimetres. */
export type Extent = { readonly width: number; readonly height: number }

/** White that is kept around everything that is placed. */
export const clearance = 0.9

/** The box of a given extent about a middle. */
export function boxAbout(middle: Point, { width, height }: Extent): Bounds {
  return {
    left: middle.x - width / 2,
    right: middle.x + width / 2,
    bottom: middle.y - height / 2,
    top: middle.y + height / 2,
  }
}

/**
 * The first of the middles about which the box lies within `area`, touches nothing, and that suits besides. Most fail at
 * the area, which costs least to ask about; `suits` is asked last, and of few.
 */
export function firstClear(
  middles: Iterable<Point>,
  extent: Extent,
  area: Bounds,
  obstacles: Obstacles,
  suits: Suits = () => true,
): Point | undefined {
  for (const middle of middles) {
    const box = grown(boxAbout(middle, extent), clearance)
    if (within(box, area) && isClear(box, obstacles) && suits(middle)) return middle
  }
  return undefined
}

/** Whether a middle will do, whatever stands around it. */
export type Suits = (middle: Point) => boolean

/**
 * Points of a grid over `area`, the nearest to `wanted` first. At most about `most` of them, so that a large part
 * takes no longer than a small one.
 */
export function spreadFrom(wanted: Point, area: Bounds, step: number, most = 2500): Iterable<Point> {
  return asFarAsLookedAt(function* () {
    yield wanted
    const width = area.right - area.left
    const height = area.top - area.bottom
    const pitch = Math.max(step, Math.sqrt((width * height) / most))
    // put in order ring by ring: most often one of the first will do
    const rings: { readonly x: number; readonly y: number; readonly far: number }[][] = []
    for (let i = 0; i <= width / pitch; i++) {
      for (let j = 0; j <= height / pitch; j++) {
        const x = area.left + i * pitch
        const y = area.bottom + j * pitch
        const far = Math.hypot(x - wanted.x, y - wanted.y)
        const ring = Math.floor(far / pitch)
        rings[ring] ??= []
        rings[ring].push({ x, y, far })
      }
    }
    for (const ring of rings) {
      if (ring !== undefined) yield* ring.sort((a, b) => a.far - b.far || a.y - b.y || a.x - b.x)
    }
  })
}

/** Whether a box lies in an area. */
export function within(box: Bounds, area: Bounds): boolean {
  return box.left >= area.left && box.right <= area.right && box.bottom >= area.bottom && box.top <= area.top
}
