import { textMark } from '../../drawing/make-mark.ts'
import { wrap } from '../../drawing/wrap.ts'
import type { Fonts, Weight } from '../../text/fonts.ts'
import type { Block } from './block.ts'

export const coverText = { layer: 'text', subject: 'cover' } as const

export type WordsStyle = {
  readonly height: number
  readonly width: number
  readonly weight?: Weight
  /** White below the last line, besides the usual one between lines. */
  readonly below?: number
  /** Stands before the first line, and the lines stand right of it. */
  readonly mark?: string
}

/** Words in lines. */
export function wordsBlock(words: string, style: WordsStyle, fonts: Fonts): Block {
  const { height, width, weight = 'regular', below = 0, mark } = style
  const inset = mark === undefined ? 0 : 2 * height
  const pitch = 1.7 * height
  const rows = wrap(words, fonts[weight], height, width - inset)
  return {
    height: rows.length * pitch + below,
    draw: ({ x, y }) => [
      ...(mark === undefined ? [] : [textMark(coverText, [mark], { x, y: y - height }, height, { weight })]),
      ...rows.map((row, i) =>
        textMark(coverText, [row], { x: x + inset, y: y - height - i * pitch }, height, { weight }),
      ),
    ],
  }
}
