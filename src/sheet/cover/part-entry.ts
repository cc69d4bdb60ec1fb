import { fitText } from '../../drawing/fit-text.ts'
import { lettering } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Model, Part } from '../../model/part.ts'
import type { Fonts } from '../../text/fonts.ts'
import { layOut } from '../../text/lay-out.ts'
import { plain, type Words } from '../../text/words.ts'
import { showSize } from '../show-size.ts'
import type { Block } from './block.ts'
import { pageList } from './page-list.ts'
import { partPicture } from './picture.ts'
import { coverText } from './words-block.ts'

const picture = { width: 34, height: 15 } as const
const aside = 3
/** An entry with the white below it. */
const height = 19

/** A part of the list: its picture, name and page, size, how many and of what. */
export function partEntry(
  part: Part,
  pages: readonly number[],
  width: number,
  model: Model,
  fonts: Fonts,
): Block {
  const room = width - picture.width - 2 * aside
  const line = (words: string, weight: 'regular' | 'bold' = 'regular'): Words => [
    fitText(fonts[weight], words, lettering.medium, room),
  ]
  const stock = [part.stock, part.wood].filter(word => word !== undefined).join(', ')
  return {
    height,
    draw: ({ x, y }): readonly Mark[] => {
      const at = (row: number) => ({ x: x + picture.width + aside, y: y - 3 - row * rowPitch })
      return [
        ...partPicture(part, { left: x, right: x + picture.width, top: y, bottom: y - picture.height }),
        textMark(coverText, line(part.label, 'bold'), at(0), lettering.medium, { weight: 'bold' }),
        textMark(coverText, sizeWords(part, room, model, fonts), at(1), lettering.medium),
        textMark(
          coverText,
          line([howMany(part), stock].filter(w => w !== '').join(' · ')),
          at(2),
          lettering.medium,
        ),
        textMark(coverText, line(pageList(pages)), at(3), lettering.medium),
      ]
    },
  }
}

const rowPitch = 4.1

/** Length, width and thickness; without their fractions set one over the other where that is too wide. */
function sizeWords({ length, width, thickness }: Part, room: number, model: Model, fonts: Fonts): Words {
  const words: Words = [
    ...showSize(length, model),
    ' × ',
    ...showSize(width, model),
    ' × ',
    ...showSize(thickness, model),
  ]
  return layOut(fonts.regular, words, lettering.medium).width <= room
    ? words
    : [fitText(fonts.regular, plain(words), lettering.medium, room)]
}

function howMany({ pieces }: Part): string {
  const count = pieces.length === 1 ? '1 piece' : `${pieces.length} pieces`
  const mirrored = pieces.filter(({ hand }) => hand === 'mirrored').length
  return mirrored === 0 ? count : `${count}, ${mirrored} mirrored`
}
