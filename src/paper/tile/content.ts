import type { Mark } from '../../drawing/mark.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import { splitEvenly } from '../../geometry/cut/split.ts'
import { contourBounds, segmentBounds } from '../../geometry/measure/bounds.ts'
import { segmentLength } from '../../geometry/measure/length.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts } from '../../text/fonts.ts'

/** Long edges are looked at in stretches of this length, so that the empty side of a slanting one is seen as empty. */
const stretch = 10

/** Boxes that together hold all that a drawing shows, each small, to tell quickly where there is anything. */
export function contentBoxes(marks: readonly Mark[], fonts: Fonts): readonly Bounds[] {
  return marks.flatMap(mark => {
    if (mark.kind !== 'path') return [boundsOfMarks(fonts, [mark])]
    return mark.contours.flatMap(contour => {
      const box = contourBounds(contour)
      if (box.right - box.left <= stretch && box.top - box.bottom <= stretch) return [box]
      return contour.segments
        .flatMap(s => splitEvenly(s, Math.ceil(segmentLength(s) / stretch)))
        .map(segmentBounds)
    })
  })
}
