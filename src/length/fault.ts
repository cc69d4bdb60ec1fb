/** What can be wrong with a size as it is written. */
export type ReadingFault =
  | 'empty'
  | 'too-long'
  | 'too-deep'
  | 'number-too-large'
  | 'strange-character'
  | 'decimal-point'
  | 'decimal-comma'
  | 'stray-comma'
  | 'zero-denominator'
  | 'fraction-too-large'
  | 'unknown-unit'
  | 'unit-misplaced'
  | 'unknown-function'
  | 'argument-count'
  | 'missing-operator'
  | 'missing-value'
  | 'minus-unclear'
  | 'division-unclear'
  | 'unclosed'
  | 'unopened'
  | 'tilde-first'
  | 'unknown-alone'
  | 'several-sizes'
  | 'x-needs-spaces'
  | 'dimension-count'
  | 'not-a-name'
  | 'reserved-name'

/** What can be wrong with what a size comes to. */
export type CalculatingFault =
  | 'unknown-name'
  | 'faulty-name'
  | 'cycle'
  | 'wrong-kind'
  | 'length-times-length'
  | 'number-over-length'
  | 'division-by-zero'
  | 'root-of-negative'
  | 'step-not-positive'
  | 'not-finite'
  | 'too-large'
  | 'precision-unusable'

/**
 * Why a size could not be read or calculated. `from` and `to` are the offsets of the guilty piece in the text,
 * counted from 0 in UTF-16 units. `found` quotes it, `wanted` says in words what would do, `nearest` is the right
 * unit, function or name that looks most like it.
 */
export type LengthFault = {
  readonly code: ReadingFault | CalculatingFault
  readonly from: number
  readonly to: number
  readonly found: string
  readonly wanted: string
  readonly nearest?: string
}

/** A value, or why there is none. Nothing in this folder throws on what a plan says. */
export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: LengthFault }

export function read<T>(value: T): Read<T> {
  return { ok: true, value }
}

export function refused(fault: LengthFault): { readonly ok: false; readonly fault: LengthFault } {
  return { ok: false, fault }
}

/** A quotation longer than this is cut: a message is one line. */
const longestQuotation = 40

/** The fault that lies from `from` to `to` in `text`, with that piece quoted. */
export function faultAt(
  text: string,
  span: { readonly from: number; readonly to: number },
  code: LengthFault['code'],
  wanted: string,
  nearest?: string,
): LengthFault {
  const { from, to } = span
  const found = quoted(text.slice(from, to))
  return nearest === undefined
    ? { code, from, to, found, wanted }
    : { code, from, to, found, wanted, nearest }
}

function quoted(piece: string): string {
  // a character outside the basic plane is two units and is not cut in half
  const letters = Array.from(piece.slice(0, 2 * longestQuotation + 2))
  return letters.length <= longestQuotation
    ? letters.join('')
    : `${letters.slice(0, longestQuotation).join('')}…`
}
