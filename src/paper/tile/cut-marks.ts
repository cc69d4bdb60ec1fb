import { fillMark, pathMark } from '../../drawing/make-mark.ts'
import { clipPaths } from '../../geometry/cut/clip-path.ts'
import { cutByRectangle } from '../../geometry/cut/cut-region.ts'
import type { Bounds, Contour, Region } from '../../geometry/shape/contour.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Fonts } from '../../text/fonts.ts'
import { type MeasuredMark, measureMark } from './measured-mark.ts'

/**
 * What of some marks lies in a window: lines and fills cut at its border, a line along the border included. Lettering
 * is never cut: it is there where all of it lies in the window.
 */
export function cutMarks(
  marks: readonly MeasuredMark[],
  window: Bounds,
  fonts: Fonts,
): readonly MeasuredMark[] {
  const shown: MeasuredMark[] = []
  for (const measured of marks) {
    const { mark, box, pieces } = measured
    if (holds(window, box)) shown.push(measured)
    else if (mark.kind === 'fill') {
      const regions = cutEach(mark.regions, pieces, window, cutRegion)
      if (regions.length > 0) shown.push(measureMark(fillMark(mark, regions), fonts))
    } else if (mark.kind === 'path') {
      const contours = cutEach(mark.contours, pieces, window, cutContour)
      if (contours.length > 0) shown.push(measureMark(pathMark(mark, mark.role, contours), fonts))
    }
  }
  return shown
}

function cutEach<P>(
  pieces: readonly P[],
  boxes: readonly Bounds[],
  window: Bounds,
  cut: (piece: P, window: Bounds) => readonly P[],
): readonly P[] {
  const shown: P[] = []
  pieces.forEach((piece, i) => {
    if (holds(window, boxes[i]!)) shown.push(piece)
    else if (meet(window, boxes[i]!)) shown.push(...cut(piece, window))
  })
  return shown
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
