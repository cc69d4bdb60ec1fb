/** As many characters of the maker's own text as a sentence repeats; the rest is left out with `…`. */
export const excerptLength = 60

/** The beginning of a text, short enough to repeat in a message, never ending in half a character. */
export function excerpt(text: string, length = excerptLength): string {
  if (text.length <= length) return text
  const half = /[\uD800-\uDBFF]$/.test(text.slice(0, length)) ? 1 : 0
  return `${text.slice(0, length - half)}…`
}

/**
 * What would not be seen, or would reorder or overwrite its surroundings on a terminal: control characters,
 * format characters (zero width, directional, byte order mark), line and paragraph separators, lone halves of
 * surrogate pairs, and private characters, which every font draws as it likes.
 */
const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Co}]/gu

/** The text with every character that cannot be seen written as its code, `⟨U+202E⟩`. */
export function visible(text: string): string {
  return text.replace(unseen, character => `⟨${codeOf(character)}⟩`)
}

/** `U+0007` */
export function codeOf(character: string): string {
  return `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`
}

/**
 * The maker's own text inside a sentence: short, visible, in quotation marks, which are curved where the text
 * has straight ones of its own (inches).
 */
export function quoted(text: string): string {
  const shown = visible(excerpt(text))
  return shown.includes('"') ? `“${shown}”` : `"${shown}"`
}

/** JSON text with every character that cannot be seen as an escape; line ends outside its strings stay. */
export function escapeUnseen(json: string): string {
  return json.replace(unseen, character =>
    character === '\n'
      ? character
      : Array.from({ length: character.length }, (_, i) => escapeOf(character.charCodeAt(i))).join(''),
  )
}

function escapeOf(unit: number): string {
  return `\\u${unit.toString(16).padStart(4, '0')}`
}
