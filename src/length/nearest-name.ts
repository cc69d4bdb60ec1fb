/** Longer words are not looked for: no name is that long, and the work grows with the square of the length. */
const longestName = 60

/** Of a longer list only the beginning is looked through, so that a list of mistakes stays cheap. */
const mostNames = 1000

/**
 * The name that was probably meant: the one with the fewest letters wrong, missing, too many or changed about
 * with their neighbour; of equals, the first. None where more than a third of the letters (at least one) would
 * have to change. Capital and small letters count as the same.
 */
export function nearestName(found: string, names: Iterable<string>): string | undefined {
  if (found.length === 0 || found.length > longestName) return undefined
  const wanted = found.toLowerCase()
  let nearest: string | undefined
  let fewest = Number.POSITIVE_INFINITY
  let looked = 0
  for (const name of names) {
    looked += 1
    if (looked > mostNames) break
    if (name.length > longestName) continue
    const longer = Math.max(name.length, wanted.length)
    const most = Math.max(1, Math.floor(longer / 3))
    if (Math.abs(name.length - wanted.length) > most) continue
    const wrong = lettersWrong(wanted, name.toLowerCase())
    // a word with no letter in common is not near, however short it is
    if (wrong <= most && wrong < longer && wrong < fewest) {
      nearest = name
      fewest = wrong
    }
  }
  return nearest
}

/**
 * The distance between two words when no piece is changed twice.
 *
 * Source: Damerau, A technique for computer detection and correction of spelling errors, 1964.
 */
function lettersWrong(a: string, b: string): number {
  let before: number[] = []
  let above = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1]
      let least = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + (same ? 0 : 1))
      const changedAbout = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
      if (changedAbout) least = Math.min(least, before[j - 2]! + 1)
      row.push(least)
    }
    before = above
    above = row
  }
  return above[b.length]!
}
