import { boundsOfContours, boundsOfRegions, joinAllBounds } from '../geometry/measure/bounds.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Fonts } from '../text/fonts.ts'
import { lineStyles } from './line-role.ts'
import type { Mark } from './mark.ts'
import { textBox } from './text-box.ts'

/** The rectangle that marks lie in, with the width of their lines and the whole of their text. */
export function boundsOfMarks(fonts: Fonts, marks: readonly Mark[]): Bounds {
  return joinAllBounds(marks.map(mark => markBounds(fonts, mark)))
}

/** The rectangle that one of them lies in. */
export function markBounds(fonts: Fonts, mark: Mark): Bounds {
  switch (mark.kind) {
    case 'text':
      return textBox(fonts, mark)
    case 'fill':
      return boundsOfRegions(mark.regions)
    case 'path': {
      const half = lineStyles[mark.role].width / 2
      const { left, bottom, right, top } = boundsOfContours(mark.contours)
      return { left: left - half, bottom: bottom - half, right: right + half, top: top + half }
    }
  }
}
