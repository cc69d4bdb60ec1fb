/** A fraction set one number over another, with the whole number before it: 2 ½ is `{ whole: '2', over: '1', under: '2' }`. */
export type StackedFraction = { readonly whole?: string; readonly over: string; readonly under: string }

/** A line of text: runs of letters and stacked fractions. */
export type Words = readonly (string | StackedFraction)[]

/** The line as plain text, as it is copied or read aloud: "2 1/2". */
export function plain(words: Words): string {
  return words
    .map(w =>
      typeof w === 'string' ? w : `${w.whole === undefined ? '' : `${w.whole} `}${w.over}/${w.under}`,
    )
    .join('')
}
