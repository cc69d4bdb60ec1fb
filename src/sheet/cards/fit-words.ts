import { lettering } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { wrap } from '../../drawing/wrap.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Fonts, Weight } from '../../text/fonts.ts'
import { measureLine } from '../../text/lay-out.ts'
import { plain, type Words } from '../../text/words.ts'

/** Words as they stand in a place of a card: lines one below the other, all of one height. */
export type Fitted = { readonly height: number; readonly weight: Weight; readonly lines: readonly Words[] }

/** What is wanted of words in a place so wide. */
export type Place = {
  readonly height: number
  readonly width: number
  /** The lines that it has room for. */
  readonly most: number
  readonly weight?: Weight
}

/** From one line to the next, where small letters stand in several. */
export const smallPitch = lettering.small + 0.7

/**
 * Words in one line of the height that is wanted, else in small letters, in no more than `most` lines of them, and cut
 * short only where these do not do. A fraction stands in the line then: one over the other its figures were too small.
 */
export function fitWords(
  words: Words,
  { height, width, most, weight = 'regular' }: Place,
  fonts: Fonts,
): Fitted {
  const font = fonts[weight]
  if (measureLine(font, words, height).width <= width) return { height, weight, lines: [words] }
  const lines = wrap(plain(words), font, lettering.small, width, most)
  return { height: lettering.small, weight, lines: lines.map(line => [line]) }
}

/** How far the last line lies below the first. */
export function downToLast({ lines }: Fitted): number {
  return (lines.length - 1) * smallPitch
}

/** Lines whose last one has its base line at `at`. */
export function fittedMarks(
  fitted: Fitted,
  at: Point,
  belongs: Pick<Mark, 'layer' | 'subject'>,
): readonly Mark[] {
  const first = at.y + downToLast(fitted)
  return fitted.lines.map((words, i) =>
    textMark(belongs, words, { x: at.x, y: first - i * smallPitch }, fitted.height, {
      weight: fitted.weight,
    }),
  )
}
