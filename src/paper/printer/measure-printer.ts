import { type FitToPage, fitToPage } from './fit-to-page.ts'
import type { Printer } from './printer.ts'
import { type Bars, squareSide } from './scale-lengths.ts'

/** What was read off a printed scale sheet, in millimetres: the two bars, and the diagonals of the square if they were measured. */
export type Readings = {
  readonly bars: Bars
  readonly across: number
  readonly along: number
  /** From the lower left to the upper right corner, and from the lower right to the upper left. */
  readonly diagonals?: readonly [number, number]
}

/** Why readings make no printer. Shares are of the true length, 1 being true. */
export type ReadingFault =
  | { readonly kind: 'swapped' }
  | { readonly kind: 'too-far'; readonly across: number; readonly along: number; readonly fit?: FitToPage }
  | { readonly kind: 'lean'; readonly lean: number }
  /** The diagonals cannot be those of a square that the bars belong to. */
  | { readonly kind: 'diagonals'; readonly wanted: readonly [number, number] }

/** A printer that is farther off than this is set up wrongly, and a correction would hide it. */
export const mostError = 0.03

/** Diagonals that agree with the bars agree at least as well as a rule can be read: a millimetre and a half on 200. */
const diagonalSlack = 0.0075

/**
 * What the readings say of a printer. How much it leans is in the diagonals A and B of the square:
 * A² − B² = 4·side²·across·lean. The bar along leans with the rest and is read longer by that: its reading is
 * √(along² + lean²) of its length.
 */
export function measurePrinter(
  name: string,
  { bars, across, along, diagonals }: Readings,
): { readonly printer: Printer } | { readonly fault: ReadingFault } {
  const errors = { across: across / bars.across, along: along / bars.along }
  const off = ({ across, along }: typeof errors): number =>
    Math.max(Math.abs(across - 1), Math.abs(along - 1))
  if (off(errors) > mostError) {
    const other = { across: along / bars.across, along: across / bars.along }
    if (off(other) <= mostError) return { fault: { kind: 'swapped' } }
    const fit = fitToPage(errors.across, errors.along)
    return { fault: { kind: 'too-far', ...errors, ...(fit === undefined ? {} : { fit }) } }
  }
  if (diagonals === undefined) return { printer: { name, ...errors, lean: 0 } }
  const side = squareSide(bars)
  const [a, b] = diagonals
  const lean = (a * a - b * b) / (4 * side * side * errors.across)
  const wanted = diagonalsOf(side, { ...errors, lean })
  const misses = [a - wanted[0], b - wanted[1]].map(miss => Math.abs(miss) / wanted[0])
  if (!(Math.max(...misses) <= diagonalSlack)) return { fault: { kind: 'diagonals', wanted } }
  if (Math.abs(lean) > mostError) return { fault: { kind: 'lean', lean } }
  const straight = Math.sqrt(errors.along * errors.along - lean * lean)
  return { printer: { name, across: errors.across, along: straight, lean } }
}

/** How long the diagonals of the square come out. */
export function diagonalsOf(
  side: number,
  { across, along, lean }: Pick<Printer, 'across' | 'along' | 'lean'>,
): readonly [number, number] {
  return [side * Math.hypot(across + lean, along), side * Math.hypot(lean - across, along)]
}
