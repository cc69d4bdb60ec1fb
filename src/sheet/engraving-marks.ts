import { pathMark } from '../drawing/make-mark.ts'
import type { Mark } from '../drawing/mark.ts'
import type { Placed } from '../model/feature.ts'
import type { Fonts } from '../text/fonts.ts'
import { engravedLetters } from './engraved-letters.ts'

/** The lines of an engraving, letters by their outlines, on the layer that holds nothing else. */
export function engravingMarks({ shape }: Placed, subject: string, fonts: Fonts): readonly Mark[] {
  const belongs = { layer: 'engrave', subject } as const
  switch (shape.kind) {
    case 'engraved-lines':
      return [pathMark(belongs, 'thin', shape.paths)]
    case 'engraved-text':
      return [pathMark(belongs, 'thin', engravedLetters(shape, fonts))]
    default:
      return []
  }
}
