import type { Mark } from '../../drawing/mark.ts'
import { markBounds } from '../../drawing/mark-bounds.ts'
import { contourBounds, regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts } from '../../text/fonts.ts'

/** A mark with the rectangle that it lies in, and those of its contours or regions: tiling asks for them at every step. */
export type MeasuredMark = {
  readonly mark: Mark
  readonly box: Bounds
  readonly pieces: readonly Bounds[]
}

export function measureMark(mark: Mark, fonts: Fonts): MeasuredMark {
  return { mark, box: markBounds(fonts, mark), pieces: piecesOf(mark) }
}

function piecesOf(mark: Mark): readonly Bounds[] {
  switch (mark.kind) {
    case 'text':
      return []
    case 'fill':
      return mark.regions.map(regionBounds)
    case 'path':
      return mark.contours.map(contourBounds)
  }
}
