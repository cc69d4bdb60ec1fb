import { fillMark, pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
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
      return regions.length === 0 ? [] : [fillMark(mark, regions)]
    }
  }
  const boxed = mark.contours.map(contour => ({ piece: contour, box: contourBounds(contour) }))
  return window => {
    const contours = cutEach(boxed, window, cutContour)
    return contours.length === 0 ? [] : [pathMark(mark, mark.role, contours)]
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
