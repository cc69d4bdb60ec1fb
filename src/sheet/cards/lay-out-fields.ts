import { lettering } from '../../drawing/lettering.ts'
import type { Fonts } from '../../text/fonts.ts'
import { textWidth } from '../../text/lay-out.ts'
import type { Field } from './card.ts'
import { downToLast, type Fitted, fitWords } from './fit-words.ts'
import { shareWidth } from './share-width.ts'

/** White between a rule and the letters beside it. */
export const inset = 1

/** Places to write in, side by side: how wide each is, and its small word. */
export type LaidFields = {
  readonly widths: readonly number[]
  readonly labels: readonly Fitted[]
  /** How much higher they have to be than those whose small words are one line each. */
  readonly more: number
}

/** Places side by side in so much width; small words that have no room beside one another are broken. */
export function layOutFields(fields: readonly Field[], width: number, fonts: Fonts): LaidFields {
  const wanted = fields.map(({ share, label }) => ({
    share,
    least: textWidth(fonts.regular, label, lettering.small) + 2 * inset + hair,
  }))
  const widths = shareWidth(width, wanted)
  const labels = fields.map(({ label }, i) =>
    fitWords([label], { height: lettering.small, width: widths[i]! - 2 * inset, most: 2 }, fonts),
  )
  return { widths, labels, more: Math.max(...labels.map(downToLast)) }
}

/** More than a word wants, so that rounding cannot cut it. */
const hair = 0.01
