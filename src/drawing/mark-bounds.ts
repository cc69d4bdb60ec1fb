import { boundsOfRegions, contourBounds, joinBounds, noBounds } from '../geometry/measure/bounds.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Fonts } from '../text/fonts.ts'
import { lineStyles } from './line-role.ts'
import type { Mark } from './mark.ts'
import { textBox } from './text-box.ts'

/** The rectangle that marks lie in, with the width of their lines and the whole of their text. */
export function boundsOfMarks(fonts: Fonts, marks: readonly Mark[]): Bounds {
  return marks.map(mark => markBounds(fonts, mark)).reduce(joinBounds, noBounds)
}

function markBounds(fonts: Fonts, mark: Mark): Bounds {
  switch (mark.kind) {
    case 'text':
      return textBox(fonts, mark)
    case 'fill':
      return boundsOfRegions(mark.regions)
    case 'path': {
      const half = lineStyles[mark.role].width / 2
      const { left, bottom, right, top } = mark.contours.map(contourBounds).reduce(joinBounds, noBounds)
      return { left: left - half, bottom: bottom - half, right: right + half, top: top + half }
    }
  }
}
