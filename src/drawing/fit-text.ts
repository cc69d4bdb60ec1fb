import type { Font } from '../text/font.ts'
import { textWidth } from '../text/lay-out.ts'

/**
 * A text cut down to what fits a width, with a sign that something is left out. Height and width in millimetres.
 */
export function fitText(font: Font, text: string, height: number, width: number): string {
  const widthOf = (s: string): number => textWidth(font, s, height)
  if (text.length <= longestTried && widthOf(text) <= width) return text
  const letters = Array.from(text.slice(0, longestTried))
  let fits = 0
  let tooLong = letters.length
  while (tooLong - fits > 1) {
    const tried = Math.floor((fits + tooLong) / 2)
    if (widthOf(shortened(letters, tried)) <= width) fits = tried
    else tooLong = tried
  }
  return shortened(letters, fits)
}

function shortened(letters: readonly string[], count: number): string {
  return `${letters.slice(0, count).join('').trimEnd()}…`
}

/** No line on any paper holds more letters than this. */
const longestTried = 2000
