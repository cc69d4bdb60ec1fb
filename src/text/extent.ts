import type { Glyph } from './glyph.ts'

/** How much room letters take side by side, in ems from where the first starts; without ink `left` is past `right`. */
export type Extent = {
  /** Where the next letter would start. */
  readonly advance: number
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

export function extentOf(glyphs: readonly Glyph[]): Extent {
  let x = 0
  let left = Infinity
  let bottom = Infinity
  let right = -Infinity
  let top = -Infinity
  for (const { ink, advance } of glyphs) {
    if (ink !== undefined) {
      left = Math.min(left, x + ink.left)
      right = Math.max(right, x + ink.right)
      bottom = Math.min(bottom, ink.bottom)
      top = Math.max(top, ink.top)
    }
    x += advance
  }
  return { advance: x, left, right, bottom, top }
}
