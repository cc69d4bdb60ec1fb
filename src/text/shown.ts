/**
 * Characters that are not seen, or that change how their neighbours are seen: control and format characters,
 * halves of surrogate pairs, private and unassigned ones, line and paragraph separators.
 */
const hidden = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}\p{Zl}\p{Zp}]/u

/** Marks that belong on top of the letter before them, where we cannot place them. */
const combining = /\p{M}/u

/**
 * The code points of a text in the order in which they were written, whatever direction its script has.
 * Letters written as a base and an accent are joined where there is one code point for both.
 */
export function codePoints(text: string): readonly number[] {
  const points: number[] = []
  for (const letter of text.normalize('NFC')) points.push(letter.codePointAt(0)!)
  return points
}

/** Whether a font may be asked for the character; one that may not is shown by its code. */
export function isSeen(codePoint: number): boolean {
  const letter = String.fromCodePoint(codePoint)
  return !hidden.test(letter) && !combining.test(letter)
}

/** The name of a character that cannot be shown: "U+4E2D". */
export function codeName(codePoint: number): string {
  return `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`
}

/**
 * The text with every hidden character written as its code, "[U+202E]": what a file says of itself where a
 * viewer has its own fonts.
 */
export function legible(text: string): string {
  return codePoints(text)
    .map(codePoint => {
      const letter = String.fromCodePoint(codePoint)
      return hidden.test(letter) ? `[${codeName(codePoint)}]` : letter
    })
    .join('')
}
