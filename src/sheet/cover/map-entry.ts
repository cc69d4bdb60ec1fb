import { fitText } from '../../drawing/fit-text.ts'
import { lettering } from '../../drawing/lettering.ts'
import { textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { wrap } from '../../drawing/wrap.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts, Weight } from '../../text/fonts.ts'
import type { Block } from './block.ts'
import { pageList } from './page-list.ts'
import { coverText } from './words-block.ts'

/** A drawing that goes over several pages. */
export type DrawingOverPages = {
  readonly part: string
  /** What is drawn, and for which pieces. */
  readonly sheet: string
  readonly pieces?: string
  readonly pages: readonly number[]
  /** Of the map when it is so high. */
  readonly width: (height: number) => number
  readonly draw: (into: Bounds) => readonly Mark[]
}

const mapHeight = 26
const rowPitch = 4.1
/** White above the map, and below it. */
const above = 1.5
const below = 4

/** Whose it is, on which pages, and how these lie. */
export function mapEntry(map: DrawingOverPages, width: number, fonts: Fonts): Block {
  const lines: readonly (readonly [words: string, weight: Weight])[] = [
    [map.part, 'bold'],
    [map.sheet, 'regular'],
    ...(map.pieces === undefined ? [] : [[map.pieces, 'regular'] as const]),
    ...wrap(pageList(map.pages), fonts.regular, lettering.medium, width, Infinity).map(
      words => [words, 'regular'] as const,
    ),
  ]
  const top = lines.length * rowPitch + above
  return {
    height: top + mapHeight + below,
    draw: ({ x, y }) => [
      ...lines.map(([words, weight], i) =>
        textMark(
          coverText,
          [fitText(fonts[weight], words, lettering.medium, width)],
          { x, y: y - lettering.medium - i * rowPitch },
          lettering.medium,
          { weight },
        ),
      ),
      ...map.draw({
        left: x,
        right: x + Math.min(width, map.width(mapHeight)),
        top: y - top,
        bottom: y - top - mapHeight,
      }),
    ],
  }
}
