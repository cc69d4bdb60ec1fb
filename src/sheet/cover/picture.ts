import { pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { compose, scale, shift } from '../../geometry/shape/matrix.ts'
import { transformContour } from '../../geometry/shape/transform.ts'
import { silhouette } from '../../model/finished-outline.ts'
import type { Part } from '../../model/part.ts'
import { cutMarks, seenFromFront } from '../template/cut-marks.ts'

/** No picture is larger, so that nobody takes it for a template. */
const largestScale = 1 / 2

/** The part's lines to cut to and its holes, made small to lie in a box, in the middle of it. */
export function partPicture({ id, drawn }: Part, into: Bounds): readonly Mark[] {
  const outline = silhouette(drawn)
  // notches may leave nothing of a part; the check says so, and there is nothing to picture
  if (outline.length === 0) return []
  const { left, right, bottom, top } = boundsOfRegions(outline)
  const factor = Math.min(
    (into.right - into.left) / (right - left),
    (into.top - into.bottom) / (top - bottom),
    largestScale,
  )
  const toBox = compose(
    compose(shift(-(left + right) / 2, -(bottom + top) / 2), scale(factor)),
    shift((into.left + into.right) / 2, (into.bottom + into.top) / 2),
  )
  const cuts = seenFromFront(drawn).seen.flatMap(feature =>
    cutMarks(feature, id).flatMap(mark =>
      mark.kind === 'path' && (mark.role === 'cut' || mark.role === 'drill') ? mark.contours : [],
    ),
  )
  const contours = [...outline.flatMap(region => [region.outer, ...region.holes]), ...cuts]
  return [
    pathMark(
      { layer: 'text', subject: `${id}-picture` },
      'thin',
      contours.map(contour => transformContour(contour, toBox)),
    ),
  ]
}
