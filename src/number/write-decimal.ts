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
  return writeOrdinary(value, places) ?? writeAny(value, places)
}

/** Below this the product with a power of ten is off by far less than `tie`. */
const ordinary = 1e9
/** How far from the middle between two neighbours a product has to be, for it to be plain which one is nearer. */
const tie = 1e-6

/**
 * Nearly every number in a file is small and no tie between two decimals: its digits are those of a whole number, which
 * are had several times faster than by `toFixed`.
 */
function writeOrdinary(value: number, places: number): string | undefined {
  const scaled = Math.abs(value) * 10 ** places
  if (scaled >= ordinary) return undefined
  let digits = Math.round(scaled)
  if (Math.abs(scaled - digits) > 0.5 - tie) return undefined
  if (digits === 0) return '0'
  let left = places
  while (left > 0 && digits % 10 === 0) {
    digits /= 10
    left--
  }
  const sign = value < 0 ? '-' : ''
  if (left === 0) return `${sign}${digits}`
  const unit = 10 ** left
  const whole = Math.floor(digits / unit)
  return `${sign}${whole}.${String(digits - whole * unit).padStart(left, '0')}`
}

function writeAny(value: number, places: number): string {
  const fixed = value.toFixed(places)
  const short = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed
  return short === '-0' ? '0' : short
}
