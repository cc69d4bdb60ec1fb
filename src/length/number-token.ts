import { faultAt, type LengthFault } from './fault.ts'

/** A number larger than this is a slip of the hand, whatever its unit. */
const greatestNumber = 1_000_000

/** A number without its unit. */
type WrittenNumber = {
  readonly from: number
  readonly to: number
  readonly value: number
  /** Whether it ends in a fraction, so that a division straight after it would be hard to read. */
  readonly fraction: boolean
}

/** The hyphens that may join a whole number to its fraction; the true minus sign − may not. */
const hyphen = '[-‐‑–]'

/** `3/4`, `2 1/2`, `1-3/16`: no spaces round the stroke, and nothing that would make it a decimal. */
const stackedFraction = new RegExp(`(?:(\\d+)(?:\\s+|${hyphen}))?(\\d+)[/⁄∕](\\d+)(?![\\d.])`, 'uy')

/** `½`, `2½`, `2 ½`, `2-½`. */
const singleFraction = new RegExp(`(?:(\\d+)(?:\\s*|${hyphen}))?([¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])`, 'uy')

const decimal = /\d+(?:\.\d+)?|\.\d+/uy

const singleFractions: Readonly<Record<string, readonly [number, number]>> = {
  '¼': [1, 4],
  '½': [1, 2],
  '¾': [3, 4],
  '⅐': [1, 7],
  '⅑': [1, 9],
  '⅒': [1, 10],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
}

/** The number that begins at an offset, or what is wrong with it; nothing where none begins. */
export function numberAt(text: string, at: number): WrittenNumber | LengthFault | undefined {
  const number = fractionAt(text, at) ?? decimalAt(text, at)
  if (number === undefined || 'code' in number) return number
  return number.value > greatestNumber
    ? faultAt(text, number, 'number-too-large', 'a number of at most 1000000')
    : number
}

function fractionAt(text: string, from: number): WrittenNumber | LengthFault | undefined {
  stackedFraction.lastIndex = from
  singleFraction.lastIndex = from
  const stacked = stackedFraction.exec(text)
  const match = stacked ?? singleFraction.exec(text)
  if (match === null) return undefined
  const [over, under] = stacked ? [Number(match[2]), Number(match[3])] : singleFractions[match[2]!]!
  const whole = match[1]
  const span = { from, to: from + match[0].length }
  if (under === 0)
    return faultAt(text, span, 'zero-denominator', 'a fraction with a number other than 0 below')
  if (whole !== undefined && over >= under) {
    return faultAt(text, span, 'fraction-too-large', 'a fraction smaller than one after a whole number')
  }
  return { ...span, value: Number(whole ?? 0) + over / under, fraction: true }
}

function decimalAt(text: string, from: number): WrittenNumber | LengthFault | undefined {
  decimal.lastIndex = from
  const match = decimal.exec(text)
  if (match === null) return undefined
  const to = from + match[0].length
  if (text.charAt(to) === '.') {
    const end = to + (/^[\d.]*/.exec(text.slice(to))?.[0].length ?? 0)
    return faultAt(text, { from, to: end }, 'decimal-point', 'one point with digits after it, such as 12.5')
  }
  return { from, to, value: Number(match[0]), fraction: false }
}
