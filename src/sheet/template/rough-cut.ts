import { pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { offsetRegions } from '../../geometry/offset/offset.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import type { Part } from '../../model/part.ts'
import { sandingAllowance } from '../../workshop/defaults.ts'
import type { Workshop } from '../../workshop/workshop.ts'

/** The dotted line round a part on which the paper is cut off, outside the cut line by what is left for sanding. */
export function roughCutMarks(outline: readonly Region[], part: Part, workshop: Workshop): readonly Mark[] {
  const allowance = sandingAllowance(workshop, part.length.mm, part.width.mm)
  const around = offsetRegions(outline, allowance)
  // without it the template is still true: the paper is then cut off by eye
  if (!around.ok) return []
  return [
    pathMark(
      { layer: 'paper', subject: part.id },
      'rough-cut',
      around.value.map(r => r.outer),
    ),
  ]
}
