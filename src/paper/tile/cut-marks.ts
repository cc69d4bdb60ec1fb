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
 * is never cut: it is there where all of it lies in the window. Windows are asked for one after the other.
 */
export function cutter(marks: readonly Mark[], fonts: Fonts): (window: Bounds) => readonly Mark[] {
  const cuts = marks.map(mark => markCutter(mark, fonts))
  return window => cuts.flatMap(cut => cut(window))
}

/** The boxes of a mark's pieces are measured once; most windows need to know no more. */
function markCutter(mark: Mark, fonts: Fonts): (window: Bounds) => readonly Mark[] {
  if (mark.kind === 'text') {
    const box = textBox(fonts, mark)
    return window => (holds(window, box) ? [mark] : [])
  }
  if (mark.kind === 'fill') {
    const boxed = mark.regions.map(region => ({ piece: region, box: regionBounds(region) }))
    return window => {
      const regions = cutEach(boxed, window, cutRegion)
      return regions.length === 0 ? [] : [{ ...mark, regions }]
    }
  }
  const boxed = mark.contours.map(contour => ({ piece: contour, box: contourBounds(contour) }))
  return window => {
    const contours = cutEach(boxed, window, cutContour)
    return contours.length === 0 ? [] : [{ ...mark, contours }]
  }
}

function cutEach<P>(
  boxed: readonly { readonly piece: P; readonly box: Bounds }[],
  window: Bounds,
  cut: (piece: P, window: Bounds) => readonly P[],
): readonly P[] {
  return boxed.flatMap(({ piece, box }) => {
    if (holds(window, box)) return [piece]
    return meet(window, box) ? cut(piece, window) : []
  })
}

function cutContour(contour: Contour, window: Bounds): readonly Contour[] {
  const [{ inside, on }] = clipPaths([contour], [rectangle(window)]) as [ReturnType<typeof clipPaths>[number]]
  return [...inside, ...on]
}

function cutRegion(region: Region, window: Bounds): readonly Region[] {
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
