import { fitText } from '../../drawing/fit-text.ts'
import { lettering } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { wrap } from '../../drawing/wrap.ts'
import type { Model, Part } from '../../model/part.ts'
import type { Fonts, Weight } from '../../text/fonts.ts'
import { measureLine, textWidth } from '../../text/lay-out.ts'
import { plain, type Words } from '../../text/words.ts'
import { sizeWords, stockWords } from '../size-words.ts'
import type { Block } from './block.ts'
import { pageList } from './page-list.ts'
import { partPicture } from './picture.ts'
import { coverText } from './words-block.ts'

const picture = { width: 34, height: 15 } as const
const aside = 3

/** A part of the list: its picture, name and page, size, how many and of what. */
export function partEntry(
  part: Part,
  pages: readonly number[],
  width: number,
  model: Model,
  fonts: Fonts,
): Block {
  const room = width - picture.width - 2 * aside
  const fits = (words: string): boolean => textWidth(fonts.regular, words, lettering.medium) <= room
  const line = (words: string, weight: Weight = 'regular'): Line => ({
    words: [fitText(fonts[weight], words, lettering.medium, room)],
    weight,
  })
  const made = [howMany(part), stockWords(part)].filter(words => words !== '')
  const lines: readonly Line[] = [
    line(part.label, 'bold'),
    { words: sizeWithin(part, room, model, fonts), weight: 'regular' },
    ...(fits(made.join(between)) ? [made.join(between)] : made).map(words => line(words)),
    ...wrap(pageList(pages), fonts.regular, lettering.medium, room, Infinity).map(words => line(words)),
  ]
  return {
    height: Math.max(picture.height, firstRow + (lines.length - 1) * rowPitch) + below,
    draw: ({ x, y }): readonly Mark[] => [
      ...partPicture(part, { left: x, right: x + picture.width, top: y, bottom: y - picture.height }),
      ...lines.map(({ words, weight }, row) =>
        textMark(
          coverText,
          words,
          { x: x + picture.width + aside, y: y - firstRow - row * rowPitch },
          lettering.medium,
          { weight },
        ),
      ),
    ],
  }
}

type Line = { readonly words: Words; readonly weight: Weight }

const firstRow = 3
/** Fractions stand a little above and below their line. */
const rowPitch = 4.8
const below = 3.2
const between = ' · '

/** Length, width and thickness; without their fractions set one over the other where that is too wide. */
function sizeWithin(part: Part, room: number, model: Model, fonts: Fonts): Words {
  const words = sizeWords(part, model)
  return measureLine(fonts.regular, words, lettering.medium).width <= room
    ? words
    : [fitText(fonts.regular, plain(words), lettering.medium, room)]
}

function howMany({ pieces }: Part): string {
  const count = pieces.length === 1 ? '1 piece' : `${pieces.length} pieces`
  const mirrored = pieces.filter(({ hand }) => hand === 'mirrored').length
  return mirrored === 0 ? count : `${count}, ${mirrored} mirrored`
}
