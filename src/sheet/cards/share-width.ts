/** What one of several side by side takes of a width: a share, in any measure, but no less than so many millimetres. */
export type Share = { readonly share: number; readonly least: number }

/** A width shared out: who wants more than its share has that, and the others share the rest. By shares alone where not all have what they want. */
export function shareWidth(width: number, among: readonly Share[]): readonly number[] {
  const sum = (sizes: readonly number[]): number => sizes.reduce((all, size) => all + size, 0)
  const widenedBy = (widened: ReadonlySet<number>): readonly number[] => {
    const rest = width - sum(among.map(({ least }, i) => (widened.has(i) ? least : 0)))
    const all = sum(among.map(({ share }, i) => (widened.has(i) ? 0 : share)))
    const widths = among.map(({ share, least }, i) => (widened.has(i) ? least : (rest * share) / all))
    const narrow = widths.findIndex((given, i) => !widened.has(i) && given < among[i]!.least)
    return narrow < 0 ? widths : widenedBy(new Set([...widened, narrow]))
  }
  const all = sum(among.map(({ share }) => share))
  return sum(among.map(({ least }) => least)) <= width
    ? widenedBy(new Set())
    : among.map(({ share }) => (width * share) / all)
}
