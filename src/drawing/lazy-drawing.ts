import type { Bounds } from '../geometry/shape/contour.ts'
import type { Fonts } from '../text/fonts.ts'
import type { Drawing } from './drawing.ts'
import type { Mark } from './mark.ts'
import { boundsOfMarks } from './mark-bounds.ts'

/** A drawing whose marks are made when somebody looks at it: of several arrangements most papers take the first. */
export function lazyDrawing(
  about: Pick<Drawing, 'id' | 'caption' | 'keepWhole'>,
  draw: () => readonly Mark[],
  fonts: Fonts,
): Drawing {
  let made: { readonly marks: readonly Mark[]; readonly bounds: Bounds } | undefined
  const make = () => {
    if (made === undefined) {
      const marks = draw()
      made = { marks, bounds: boundsOfMarks(fonts, marks) }
    }
    return made
  }
  return {
    ...about,
    get marks() {
      return make().marks
    },
    get bounds() {
      return make().bounds
    },
  }
}
