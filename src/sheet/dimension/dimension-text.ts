import { lettering } from '../../drawing/lettering.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Words } from '../../text/words.ts'
import { boxAbout } from '../label/find-place.ts'
import { label } from '../label/place-text.ts'
import { type Edge, isLevel, pointBeside } from './edge.ts'

/** Lettering beside an edge: what it takes along the edge and away from it, and its mark and box when it stands. */
export type DimensionText = {
  readonly along: number
  readonly across: number
  /** `near` is how far out its nearest side is. */
  readonly put: (along: number, near: number) => { readonly mark: Mark; readonly box: Bounds }
}

/** Large lettering, readable at arm's length; `upward` turns it to read from the bottom to the top. */
export function dimensionText(words: Words, edge: Edge, upward: boolean, fonts: Fonts): DimensionText {
  const { extent, markAt } = label(fonts, words, lettering.large, 'dimension', { layer: 'dimension', upward })
  const level = isLevel(edge)
  const across = level ? extent.height : extent.width
  return {
    along: level ? extent.width : extent.height,
    across,
    put: (along, near) => {
      const middle = pointBeside(edge, along, near + across / 2)
      return { mark: markAt(middle), box: boxAbout(middle, extent) }
    },
  }
}
