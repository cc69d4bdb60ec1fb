import { coincident } from '../number/tolerance.ts'
import { writeDecimal } from '../number/write-decimal.ts'
import { drillSizes } from './drill-sizes.ts'
import { fractionPieces, nearestFraction } from './nearest-fraction.ts'
import type { Pieces } from './pieces.ts'
import { toMillimetres } from './unit.ts'

/** Bits of a fraction of an inch are sold to the 64th. */
const finestFraction = 64

/**
 * What a bit of this diameter is called, whatever the plan's unit and precision: `1/4"` where it is a 64th of an
 * inch exactly, `#43 (0.089")` or `letter F (0.257")` for a number or letter drill, and millimetres for any other.
 */
export function nameBit(mm: number): Pieces {
  const fraction = nearestFraction(mm, finestFraction)
  const zero = fraction.whole === 0 && fraction.over === 0
  if (!zero && Math.abs(fraction.error) <= coincident) return [...fractionPieces(fraction), '"']
  const drill = drillSizes.find(({ inches }) => Math.abs(toMillimetres(inches, 'inch') - mm) <= coincident)
  if (drill !== undefined) return [`${drill.name} (${writeDecimal(drill.inches, 4)}")`]
  return [`${writeDecimal(mm, 3)} mm`]
}
