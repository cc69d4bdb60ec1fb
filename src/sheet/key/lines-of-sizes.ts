import type { Words } from '../../text/words.ts'

/** Sizes one after another, broken between them into lines no wider than `width` unless one size alone is. */
export function linesOfSizes(
  sizes: readonly Words[],
  width: number,
  widthOf: (words: Words) => number,
): readonly Words[] {
  const lines: Words[] = []
  for (const size of sizes) {
    const before = lines.at(-1)
    const longer = before === undefined ? size : [...before, ',  ', ...size]
    if (before !== undefined && widthOf(longer) <= width) lines[lines.length - 1] = longer
    else lines.push(size)
  }
  return lines
}
