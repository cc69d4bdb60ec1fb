import { nearestMultiple } from '../number/nearest-multiple.ts'
import { coincident } from '../number/tolerance.ts'
import { writeDecimal } from '../number/write-decimal.ts'
import { fractionPieces, nearestFraction } from './nearest-fraction.ts'
import { line, type Pieces, plainText } from './pieces.ts'
import { decimalPlaces, fractionDenominator, type LengthStyle } from './precision.ts'
import type { Basis } from './scope.ts'
import { toMillimetres, type Unit } from './unit.ts'

/** A rounded length that is off by more than this, in mm, is marked ≈ and has the decimal beside it. */
export const unmarkedError = 0.02

/** Decimals that keep the unrounded length within `unmarkedError`. */
const placesBeside: Readonly<Record<Unit, number>> = { inch: 3, mm: 2 }

export type ShowOptions = {
  /** A size that was scaled off the drawing is printed with `~`. */
  readonly basis?: Basis
  /** Left out where the words around it say the unit. */
  readonly unitMark?: boolean
  /** Whether lengths from a foot up are shown in feet and inches. */
  readonly feet?: boolean
}

/**
 * A length as a maker reads it: inches in fractions, millimetres in decimals, to the nearest of the style's steps.
 * Where that is off by more than 0.02 mm it says so: `≈ 13/64" (0.197")`.
 *
 * @throws RangeError when the length is not finite or the precision not positive: that is a fault of the program
 */
export function showLength(mm: number, style: LengthStyle, options: ShowOptions = {}): Pieces {
  return shown(mm, style, options, [])
}

/** The length in the style's unit and the other one in brackets: `2 1/2" (63.5 mm)`. */
export function showBothUnits(mm: number, style: LengthStyle, options: ShowOptions = {}): Pieces {
  return shown(mm, style, options, otherUnit(mm, style))
}

/** `showLength` as plain text, for a sentence. */
export function lengthText(mm: number, style: LengthStyle, options: ShowOptions = {}): string {
  return plainText(showLength(mm, style, options))
}

/** `showBothUnits` as plain text, for a sentence. */
export function bothUnitsText(mm: number, style: LengthStyle, options: ShowOptions = {}): string {
  return plainText(showBothUnits(mm, style, options))
}

function shown(mm: number, style: LengthStyle, options: ShowOptions, beside: Pieces): Pieces {
  const { basis, unitMark = true, feet = false } = options
  const { error, pieces } = rounded(mm, style, unitMark, feet)
  const inexact = Math.abs(error) > unmarkedError
  const exact = inexact ? [decimal(mm, style.unit, placesBeside[style.unit], unitMark)] : []
  const brackets = [...exact, ...(exact.length > 0 && beside.length > 0 ? [', '] : []), ...beside]
  return line(
    [basis === 'scaled' ? '~' : '', inexact ? '≈ ' : ''],
    pieces,
    brackets.length > 0 ? [' (', ...brackets, ')'] : [],
  )
}

/** To the nearest step, with what that adds to the length in mm. */
function rounded(mm: number, style: LengthStyle, unitMark: boolean, feet: boolean) {
  const denominator = fractionDenominator(style)
  if (denominator === undefined) {
    const nearest = nearestMultiple(mm, style.precision, coincident) * style.precision
    return { error: nearest - mm, pieces: [decimal(nearest, style.unit, decimalPlaces(style), unitMark)] }
  }
  const fraction = nearestFraction(mm, denominator)
  const { error } = fraction
  if (!feet || fraction.whole < 12)
    return { error, pieces: [...fractionPieces(fraction), unitMark ? '"' : ''] }
  const inches = fraction.whole % 12
  const whole = `${fraction.negative ? '-' : ''}${writeDecimal((fraction.whole - inches) / 12, 0)}'`
  const none = inches === 0 && fraction.over === 0
  const rest = none ? [] : [' ', ...fractionPieces({ ...fraction, negative: false, whole: inches }), '"']
  return { error, pieces: [whole, ...rest] }
}

function decimal(mm: number, unit: Unit, places: number, unitMark: boolean): string {
  const mark = unit === 'inch' ? '"' : ' mm'
  // half a last place goes up, as in nearestFraction, however the binary number happens to lie
  const rounded = nearestMultiple(mm, toMillimetres(10 ** -places, unit), coincident) / 10 ** places
  return `${writeDecimal(rounded, places)}${unitMark ? mark : ''}`
}

/** Beside inches millimetres to a hundredth, beside millimetres the nearest 64th. */
function otherUnit(mm: number, style: LengthStyle): Pieces {
  if (style.unit === 'inch') return [decimal(mm, 'mm', placesBeside.mm, true)]
  const sixtyFourths = { unit: 'inch', precision: toMillimetres(1 / 64, 'inch') } as const
  const { error, pieces } = rounded(mm, sixtyFourths, true, false)
  return [Math.abs(error) > unmarkedError ? '≈ ' : '', ...pieces]
}
