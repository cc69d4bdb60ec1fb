/**
 * The one place where a number becomes text: plain decimal notation, at most `places` digits after the point,
 * trailing zeros dropped, never `-0`, never an exponent.
 *
 * @param places whole number from 0 to 15
 * @throws RangeError when the value is not finite or too large to be written without an exponent (1e21): a
 *   length that large is a fault of the program, not of the plan
 */
export function writeDecimal(value: number, places: number): string {
  if (!Number.isFinite(value) || Math.abs(value) >= 1e21) {
    throw new RangeError(`cannot write ${value} as a decimal`)
  }
  const fixed = value.toFixed(places)
  const short = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed
  return short === '-0' ? '0' : short
}
