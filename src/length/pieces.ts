/**
 * A line of text with its fractions apart, so that they can be set one number over another: runs of letters, and
 * fractions with the whole number before them.
 */
export type Pieces = readonly (string | StackedFraction)[]

type StackedFraction = { readonly whole?: string; readonly over: string; readonly under: string }

/** The line as plain text: "2 1/2". */
export function plainText(pieces: Pieces): string {
  return pieces.map(piece => (typeof piece === 'string' ? piece : plainFraction(piece))).join('')
}

function plainFraction({ whole, over, under }: StackedFraction): string {
  return `${whole === undefined ? '' : `${whole} `}${over}/${under}`
}

/** One line of several, with runs of letters that meet made into one and empty ones left out. */
export function line(...parts: readonly Pieces[]): Pieces {
  const joined: (string | StackedFraction)[] = []
  for (const piece of parts.flat()) {
    const last = joined.at(-1)
    if (typeof piece === 'string' && typeof last === 'string') joined[joined.length - 1] = last + piece
    else if (piece !== '') joined.push(piece)
  }
  return joined
}
