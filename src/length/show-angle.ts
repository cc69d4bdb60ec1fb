import { degrees } from '../number/degrees.ts'
import { writeDecimal } from '../number/write-decimal.ts'

/** An angle in radians as degrees to a hundredth, finer than any saw can be set: `22.5°`. */
export function angleText(radians: number): string {
  return `${writeDecimal(degrees(radians), 2)}°`
}
