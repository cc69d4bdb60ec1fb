/**
 * The one place where a number becomes text: plain decimal notation, at most `places` digits after the point,
 * trailing zeros dropped, never `-0`, never an exponent.
 *
 * @param places whole number from 0 to 15
 * @throws RangeError when the value is not finite or too large to be written without an exponent (1e21): a
 *   length that large is a fault of the program, not of the plan
 */
export function writeDecimal(value: number, places: number): string {
  const digits = digitsOf(value, places)
  if (digits < 0) return writeAny(value, places)
  if (digits === 0) return '0'
  const left = placesLeft(digits, places)
  const significant = digits / powers[places - left]!
  const sign = value < 0 ? '-' : ''
  if (left === 0) return `${sign}${significant}`
  const unit = powers[left]!
  const whole = Math.floor(significant / unit)
  return `${sign}${whole}.${String(significant - whole * unit).padStart(left, '0')}`
}

/** No number is written with more letters: 21 before the point, 15 after it, the point and the sign. */
export const longestDecimal = 38

/**
 * Puts a number, as {@link writeDecimal} has it, as the codes of its letters into `room` from `at` on.
 *
 * @param room has {@link longestDecimal} bytes from there
 * @returns where they end
 */
export function putDecimal(value: number, places: number, room: Uint8Array, at: number): number {
  const digits = digitsOf(value, places)
  if (digits < 0) {
    const text = writeAny(value, places)
    for (let i = 0; i < text.length; i++) room[at + i] = text.charCodeAt(i)
    return at + text.length
  }
  let to = at
  if (value < 0 && digits > 0) room[to++] = minus
  const left = placesLeft(digits, places)
  let rest = digits / powers[places - left]!
  let count = left + 1
  while (rest >= powers[count]!) count++
  const end = to + count + (left > 0 ? 1 : 0)
  // from the last digit to the first
  for (let i = end - 1; i >= to; i--) {
    if (left > 0 && i === end - 1 - left) room[i] = point
    else {
      const tenth = Math.floor(rest / 10)
      room[i] = zero + rest - 10 * tenth
      rest = tenth
    }
  }
  return end
}

const minus = 0x2d
const point = 0x2e
const zero = 0x30

/** Powers of ten, exact. */
const powers = Array.from({ length: 16 }, (_, k) => 10 ** k)

/** Below this the product with a power of ten is off by far less than `tie`. */
const ordinary = 1e9
/** How far from the middle between two neighbours a product has to be, for it to be plain which one is nearer. */
const tie = 1e-6

/**
 * The digits of a number with so many places, as a whole number without its sign. Nearly every number in a file is
 * small and no tie between two decimals, and its digits are had several times faster than by `toFixed`; −1 for the others.
 */
function digitsOf(value: number, places: number): number {
  const scaled = Math.abs(value) * powers[places]!
  if (!(scaled < ordinary)) return -1
  const digits = Math.round(scaled)
  return Math.abs(scaled - digits) > 0.5 - tie ? -1 : digits
}

/** How many places are left when the zeros at the end are dropped. */
function placesLeft(digits: number, places: number): number {
  let left = places
  for (let rest = digits; left > 0; left--) {
    const tenth = Math.floor(rest / 10)
    if (rest !== 10 * tenth) break
    rest = tenth
  }
  return left
}

function writeAny(value: number, places: number): string {
  if (!Number.isFinite(value) || Math.abs(value) >= 1e21) {
    throw new RangeError(`cannot write ${value} as a decimal`)
  }
  // of whole numbers, as most factors of matrices are, the places are all zeros
  if (Number.isSafeInteger(value)) return String(value)
  const fixed = value.toFixed(places)
  const short = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed
  return short === '-0' ? '0' : short
}
