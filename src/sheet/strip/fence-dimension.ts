import { fitText } from '../../drawing/fit-text.ts'
import { lettering } from '../../drawing/lettering.ts'
import { linesMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Fonts } from '../../text/fonts.ts'
import { measureLine } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'

/** The tab that is folded over the reference end: how far it reaches out from there, and how high what stands on it. */
export type Tab = {
  readonly marks: readonly Mark[]
  readonly reach: number
  readonly top: number
  readonly dimensionAt: number
}

const belongs = { layer: 'dimension', subject: 'fence-distance' } as const
const white = 1.2
const tick = 1.2
/** No name of an end is drawn longer than this. */
const longestName = 60

/**
 * What stands on the tab beyond the reference end: the end's name, and the fence distance as a length to lay a rule
 * on, between the fold at y = 0 and the line of centres. `from` is how far out it begins.
 */
export function endTab(
  fence: number,
  from: number,
  shown: Words,
  end: string,
  toward: 1 | -1,
  fonts: Fonts,
): Tab {
  const name = fitText(fonts.regular, end, lettering.medium, longestName)
  const laid = measureLine(fonts.regular, [name], lettering.medium)
  const thick = laid.ascent + laid.descent
  const at = (away: number, y: number) => ({ x: -toward * (from + away), y })
  const nameFrom = laid.width + 2 * white <= fence ? (fence - laid.width) / 2 : fence + white
  const middle = at(white + thick / 2, nameFrom)
  const dimensionAt = white + thick + 2 * white
  const size = measureLine(fonts.regular, shown, lettering.large)
  const word = measureLine(fonts.regular, [fenceWord], lettering.medium)
  const sizeFrom = Math.max(0, fence / 2 - (size.ascent + size.descent) / 2) + white / 2
  const wordFrom = sizeFrom + size.ascent + size.descent + white / 2
  const align = toward === 1 ? 'end' : 'start'
  const aside = dimensionAt + white
  return {
    marks: [
      textMark(
        { layer: 'text', subject: 'reference-end' },
        [name],
        { x: middle.x + (laid.ascent - laid.descent) / 2, y: middle.y },
        lettering.medium,
        { angle: Math.PI / 2 },
      ),
      linesMark(belongs, 'thin', [
        [at(dimensionAt, 0), at(dimensionAt, fence)],
        [at(dimensionAt - tick, -tick), at(dimensionAt + tick, tick)],
        [at(dimensionAt - tick, fence - tick), at(dimensionAt + tick, fence + tick)],
      ]),
      textMark(belongs, shown, at(aside + tick, sizeFrom + size.descent), lettering.large, { align }),
      textMark(belongs, [fenceWord], at(aside + tick, wordFrom + word.descent), lettering.medium, { align }),
    ],
    reach: from + aside + tick + Math.max(size.width, word.width) + white,
    top: Math.max(nameFrom + laid.width, wordFrom + word.ascent + word.descent, fence + tick) + white,
    dimensionAt: from + dimensionAt,
  }
}

const fenceWord = 'fence'
