/** A fraction of whole numbers of any size, for checking calculations in doubles. `under` is above 0. */
export type Rational = { readonly over: bigint; readonly under: bigint }

export function rational(over: bigint | number, under: bigint | number = 1): Rational {
  const [a, b] = [BigInt(over), BigInt(under)]
  const common = greatestCommonDivisor(a < 0n ? -a : a, b < 0n ? -b : b)
  const sign = b < 0n ? -1n : 1n
  return { over: (sign * a) / common, under: (sign * b) / common }
}

export const plus = (a: Rational, b: Rational) =>
  rational(a.over * b.under + b.over * a.under, a.under * b.under)
export const times = (a: Rational, b: Rational) => rational(a.over * b.over, a.under * b.under)
export const over = (a: Rational, b: Rational) => rational(a.over * b.under, a.under * b.over)
export const minus = (a: Rational): Rational => ({ over: -a.over, under: a.under })
export const less = (a: Rational, b: Rational) => a.over * b.under < b.over * a.under

/** The whole number nearest to it, half-way going away from zero. */
export function nearestWhole({ over, under }: Rational): bigint {
  const size = over < 0n ? -over : over
  const whole = (2n * size + under) / (2n * under)
  return over < 0n ? -whole : whole
}

/** The double near it: good to about 17 digits however long the two numbers are. */
export function toNumber({ over, under }: Rational): number {
  const scale = 10n ** 25n
  const whole = over / under
  return Number(whole) + Number(((over - whole * under) * scale) / under) / 1e25
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b]
  while (y !== 0n) [x, y] = [y, x % y]
  return x
}
