import type { Mark, Text } from '../../drawing/mark.ts'
import { textBox } from '../../drawing/text-box.ts'
import { clipPaths } from '../../geometry/cut/clip-path.ts'
import { cutByRectangle } from '../../geometry/cut/cut-region.ts'
import { contourBounds, regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds, Contour, Region } from '../../geometry/shape/contour.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Fonts } from '../../text/fonts.ts'

/**
 * What of some marks lies in a window: lines and fills cut at its border, a line along the border included. Lettering
 * is never cut: it is there where all of it lies in the window.
 */
export function cutMarks(marks: readonly Mark[], window: Bounds, fonts: Fonts): readonly Mark[] {
  return marks.flatMap((mark): readonly Mark[] => {
    if (mark.kind === 'text') return holds(window, textBox(fonts, mark)) ? [mark] : []
    if (mark.kind === 'fill') {
      const regions = mark.regions.flatMap(region => cutRegion(region, window))
      return regions.length === 0 ? [] : [{ ...mark, regions }]
    }
    const contours = mark.contours.flatMap(contour => cutContour(contour, window))
    return contours.length === 0 ? [] : [{ ...mark, contours }]
  })
}

function cutContour(contour: Contour, window: Bounds): readonly Contour[] {
  const box = contourBounds(contour)
  if (holds(window, box)) return [contour]
  if (!meet(window, box)) return []
  const [{ inside, on }] = clipPaths([contour], [rectangle(window)]) as [ReturnType<typeof clipPaths>[number]]
  return [...inside, ...on]
}

function cutRegion(region: Region, window: Bounds): readonly Region[] {
  const box = regionBounds(region)
  if (holds(window, box)) return [region]
  if (!meet(window, box)) return []
  const cut = cutByRectangle([region], window)
  // what the kernel cannot cut is shown whole rather than lost: a hair too much ink on the rim of a page
  return cut.ok ? cut.value : [region]
}

export function holds(window: Bounds, box: Bounds): boolean {
  return (
    box.left >= window.left - coincident &&
    box.right <= window.right + coincident &&
    box.bottom >= window.bottom - coincident &&
    box.top <= window.top + coincident
  )
}

function meet(a: Bounds, b: Bounds): boolean {
  return (
    a.left <= b.right + coincident &&
    b.left <= a.right + coincident &&
    a.bottom <= b.top + coincident &&
    b.bottom <= a.top + coincident
  )
}

/**
 * Lettering that no window holds is moved, no farther than it takes, into the one that shows the most of it; the rest
 * stays where it is. `windows` are those of all tiles.
 */
export function spareLettering(
  marks: readonly Mark[],
  windows: readonly Bounds[],
  fonts: Fonts,
): readonly Mark[] {
  return marks.map(mark => {
    if (mark.kind !== 'text') return mark
    const box = textBox(fonts, mark)
    if (windows.some(window => holds(window, box))) return mark
    const shown = windows.map(window => sharedArea(window, box))
    const most = shown.reduce((best, area, i) => (area > shown[best]! ? i : best), 0)
    return movedInto(mark, box, windows[most]!)
  })
}

function movedInto<M extends Text>(mark: M, box: Bounds, window: Bounds): M {
  const by = (low: number, high: number, from: number, to: number): number =>
    low < from ? from - low : high > to ? to - high : 0
  return {
    ...mark,
    at: {
      x: mark.at.x + by(box.left, box.right, window.left, window.right),
      y: mark.at.y + by(box.bottom, box.top, window.bottom, window.top),
    },
  }
}

function sharedArea(a: Bounds, b: Bounds): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left)
  const height = Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom)
  return width > 0 && height > 0 ? width * height : 0
}
