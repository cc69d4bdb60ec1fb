import type { Drawing } from '../../drawing/drawing.ts'
import type { Mark } from '../../drawing/mark.ts'
import { regionBounds, segmentBounds } from '../../geometry/measure/bounds.ts'
import { segmentLength } from '../../geometry/measure/length.ts'
import type { Bounds, Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { MeasuredMark } from './measured-mark.ts'

/** What a seam had better not cross, the worst first: a hole, the end of a slot or arc, lettering. */
export const spareKinds = ['hole', 'end', 'label'] as const
export type SpareKind = (typeof spareKinds)[number]

/** A box that a seam spares, white around it included. */
export type Spare = { readonly kind: SpareKind; readonly box: Bounds }

/** So far from a seam a line is still easy to follow when the pages lie a millimetre off. */
export const clearance = 1.5

/** An edge up to this long, such as the end of a slot, is spared whole; of a longer one the ends are. */
const shortEdge = 25

/** Lettering and signs up to this size are spared; hatching that fills half a page cannot be. */
const largestLabel = 120

/** What the seams of a drawing spare: holes with their crosses, ends of slots and arcs, corners, lettering, and what the drawing says. */
export function sparesOf(marks: readonly MeasuredMark[], keepWhole: Drawing['keepWhole']): readonly Spare[] {
  const spare = (kind: SpareKind, box: Bounds): Spare => ({ kind, box: grown(box, clearance) })
  return [
    ...keepWhole.map(region => spare('hole', regionBounds(region))),
    ...marks.flatMap(({ mark, box }): readonly Spare[] => {
      if (mark.layer === 'drill') return [spare('hole', box)]
      if (mark.kind === 'path' && mark.role === 'cut')
        return mark.contours.flatMap(endBoxes).map(box => spare('end', box))
      return isLabel(mark) && isSmall(box) ? [spare('label', box)] : []
    }),
  ]
}

/** Whether a mark says something, rather than shows where wood ends. */
function isLabel(mark: Mark): boolean {
  return mark.kind !== 'path' || (mark.layer === 'text' && mark.role === 'wide')
}

function isSmall({ left, right, bottom, top }: Bounds): boolean {
  return Math.max(right - left, top - bottom) <= largestLabel
}

function endBoxes({ segments, closed }: Contour): readonly Bounds[] {
  const short = segments.filter(s => segmentLength(s) <= shortEdge).map(segmentBounds)
  const ends = segments.flatMap(s => (segmentLength(s) > shortEdge ? [s.from, s.to] : []))
  return [...short, ...(closed ? new Set(ends) : ends)].map(end => ('x' in end ? pointBox(end) : end))
}

function pointBox({ x, y }: Point): Bounds {
  return { left: x, right: x, bottom: y, top: y }
}

export function grown(box: Bounds, by: number): Bounds {
  return { left: box.left - by, bottom: box.bottom - by, right: box.right + by, top: box.top + by }
}
