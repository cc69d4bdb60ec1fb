import { splitEvenly } from '../../geometry/cut/split.ts'
import { segmentBounds } from '../../geometry/measure/bounds.ts'
import { segmentLength } from '../../geometry/measure/length.ts'
import type { Bounds, Contour } from '../../geometry/shape/contour.ts'
import type { MeasuredMark } from './measured-mark.ts'

/** Long edges are looked at in stretches of this length, so that the empty side of a slanting one is seen as empty. */
const stretch = 10

/** Boxes that together hold all that some marks show, each small, to tell quickly where there is anything. */
export function contentBoxes(marks: readonly MeasuredMark[]): readonly Bounds[] {
  const boxes: Bounds[] = []
  for (const { mark, box, pieces } of marks) {
    if (mark.kind !== 'path') boxes.push(box)
    else {
      mark.contours.forEach((contour, i) => {
        putBoxes(contour, pieces[i]!, boxes)
      })
    }
  }
  return boxes
}

function putBoxes(contour: Contour, box: Bounds, boxes: Bounds[]): void {
  if (box.right - box.left <= stretch && box.top - box.bottom <= stretch) {
    boxes.push(box)
    return
  }
  for (const s of contour.segments) {
    const parts = Math.ceil(segmentLength(s) / stretch)
    if (parts <= 1) boxes.push(segmentBounds(s))
    else for (const part of splitEvenly(s, parts)) boxes.push(segmentBounds(part))
  }
}
