import { writeDecimal } from '../number/write-decimal.ts'

/**
 * Digits after the point of a millimetre in a file. Rounding moves a point by at most 0.000005 mm along each
 * axis, a thousandth part of `printable`; many readers hold 32-bit numbers and would not see a further digit on
 * a sheet of paper.
 */
export const placesOfMm = 5

/** A length or coordinate in millimetres, as files carry it. */
export function writeMm(value: number): string {
  return writeDecimal(value, placesOfMm)
}

/**
 * A factor of a matrix. Twelve places keep the far corner of ten metres within 1e-8 mm.
 */
export function writeFactor(value: number): string {
  return writeDecimal(value, 12)
}
