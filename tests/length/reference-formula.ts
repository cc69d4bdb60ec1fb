import fc from 'fast-check'
import {
  less,
  minus,
  nearestWhole,
  over,
  plus,
  type Rational,
  rational,
  times,
  toNumber,
} from './rational.ts'

/**
 * A second way to calculate formulas: random ones, written out as text beside a value in exact fractions that is
 * calculated here and shares no code with the program. Lengths are in inches.
 */
export type Formula =
  | { readonly kind: 'literal'; readonly text: string; readonly value: Rational; readonly isLength: boolean }
  | { readonly kind: 'negative'; readonly of: Formula }
  | {
      readonly kind: '+' | '-' | '*' | '/'
      readonly left: Formula
      readonly right: Formula
      readonly tight: boolean
    }
  | { readonly kind: 'min' | 'max' | 'round'; readonly of: readonly [Formula, Formula] }
  | { readonly kind: 'brackets'; readonly of: Formula }

/** `error`: how far a calculation in doubles may be off by now. */
export type Result = { readonly value: Rational; readonly isLength: boolean; readonly error: number }

export type RefusedAs =
  | 'length-times-length'
  | 'number-over-length'
  | 'division-by-zero'
  | 'step-not-positive'
  /** Doubles cannot decide: a divisor, or the way to a nearest step, is within the error. */
  | 'too-close'

export const names: Readonly<Record<string, Rational>> = {
  gauge: rational(35, 16),
  board: rational(7, 16),
  rail_2: rational(-5, 4),
}

const whole = fc.integer({ min: 0, max: 99 })
const binary = fc.constantFrom(2, 3, 4, 8, 16, 32, 64, 10)

const numberText: fc.Arbitrary<readonly [string, Rational]> = fc.oneof(
  whole.map(n => [`${n}`, rational(n)] as const),
  fc.tuple(whole, fc.integer({ min: 0, max: 999 })).map(([n, thousandths]) => {
    return [`${n}.${`${thousandths}`.padStart(3, '0')}`, rational(1000 * n + thousandths, 1000)] as const
  }),
  fc.tuple(whole, binary).map(([n, under]) => [`${n}/${under}`, rational(n, under)] as const),
  fc.tuple(whole, binary, fc.nat(), fc.constantFrom(' ', '-', '  ')).map(([n, under, part, between]) => {
    const top = part % under
    return [`${n}${between}${top}/${under}`, rational(n * under + top, under)] as const
  }),
  fc
    .tuple(whole, fc.constantFrom(['½', 1, 2] as const, ['⅜', 3, 8] as const, ['⅔', 2, 3] as const))
    .map(([n, [mark, top, under]]) => [`${n}${mark}`, rational(n * under + top, under)] as const),
)

const literal: fc.Arbitrary<Formula> = fc.oneof(
  numberText.map(([text, value]) => ({ kind: 'literal', text, value, isLength: false }) as const),
  fc
    .tuple(
      numberText,
      fc.constantFrom(
        ['"', 1, 1] as const,
        [' in', 1, 1] as const,
        ['″', 1, 1] as const,
        [' mm', 10, 254] as const,
        ['mm', 10, 254] as const,
        [' cm', 100, 254] as const,
        [' ft', 12, 1] as const,
      ),
    )
    .map(([[text, value], [unit, top, under]]) => {
      return {
        kind: 'literal',
        text: text + unit,
        value: times(value, rational(top, under)),
        isLength: true,
      } as const
    }),
  fc
    .tuple(whole, numberText, fc.constantFrom("' ", "'", "'-", ' ft '))
    .map(([feet, [text, value], between]) => {
      const inches = plus(rational(12 * feet), value)
      return { kind: 'literal', text: `${feet}${between}${text}"`, value: inches, isLength: true } as const
    }),
  fc
    .constantFrom(...Object.entries(names))
    .map(([text, value]) => ({ kind: 'literal', text, value, isLength: true }) as const),
)

export const formula: fc.Arbitrary<Formula> = fc.letrec<{ formula: Formula }>(tie => ({
  formula: fc.oneof(
    { depthSize: 'medium', withCrossShrink: true },
    literal,
    fc.record({
      kind: fc.constantFrom('+', '-', '*', '/'),
      left: tie('formula'),
      right: tie('formula'),
      tight: fc.boolean(),
    }),
    fc.record({ kind: fc.constant('negative' as const), of: tie('formula') }),
    fc.record({ kind: fc.constant('brackets' as const), of: tie('formula') }),
    fc.record({
      kind: fc.constantFrom('min', 'max', 'round'),
      of: fc.tuple(tie('formula'), tie('formula')),
    }),
  ),
})).formula

/** How closely a formula holds together: sums 1, products 2, a minus before it 3, anything else 4. */
function strength({ kind }: Formula): number {
  return kind === '+' || kind === '-' ? 1 : kind === '*' || kind === '/' ? 2 : kind === 'negative' ? 3 : 4
}

export function written(formula: Formula): string {
  switch (formula.kind) {
    case 'literal':
      return formula.text
    case 'brackets':
      return `(${written(formula.of)})`
    case 'negative':
      return `-${held(formula.of, 3)}`
    case 'min':
    case 'max':
    case 'round':
      return `${formula.kind}(${formula.of.map(written).join(', ')})`
    default: {
      const mine = strength(formula)
      const sign =
        formula.tight && (formula.kind === '+' || formula.kind === '*') ? formula.kind : ` ${formula.kind} `
      return `${held(formula.left, mine)}${sign}${held(formula.right, mine + 1)}`
    }
  }
}

function held(formula: Formula, atLeast: number): string {
  return strength(formula) >= atLeast ? written(formula) : `(${written(formula)})`
}

const roundOff = 2 ** -52

function result(value: Rational, isLength: boolean, error: number): Result {
  return { value, isLength, error: error + 4 * roundOff * size(value) }
}

const size = (value: Rational) => Math.abs(toNumber(value))

export function reference(formula: Formula): Result | RefusedAs {
  switch (formula.kind) {
    case 'literal':
      return result(formula.value, formula.isLength, 0)
    case 'brackets':
      return reference(formula.of)
    case 'negative': {
      const of = reference(formula.of)
      return typeof of === 'string' ? of : { ...of, value: minus(of.value) }
    }
    case 'min':
    case 'max':
    case 'round': {
      const [a, b] = formula.of.map(reference) as [Result | RefusedAs, Result | RefusedAs]
      if (typeof a === 'string') return a
      if (typeof b === 'string') return b
      return formula.kind === 'round' ? rounded(a, b) : chosen(a, b, formula.kind)
    }
    default: {
      const a = reference(formula.left)
      if (typeof a === 'string') return a
      const b = reference(formula.right)
      return typeof b === 'string' ? b : operated(formula.kind, a, b)
    }
  }
}

function operated(operator: '+' | '-' | '*' | '/', a: Result, b: Result): Result | RefusedAs {
  switch (operator) {
    case '+':
      return result(plus(a.value, b.value), a.isLength || b.isLength, a.error + b.error)
    case '-':
      return result(plus(a.value, minus(b.value)), a.isLength || b.isLength, a.error + b.error)
    case '*':
      if (a.isLength && b.isLength) return 'length-times-length'
      return result(
        times(a.value, b.value),
        a.isLength || b.isLength,
        a.error * size(b.value) + b.error * size(a.value) + a.error * b.error,
      )
    case '/': {
      if (b.value.over === 0n && b.error === 0) return 'division-by-zero'
      if (size(b.value) <= 1e3 * b.error) return 'too-close'
      if (b.isLength && !a.isLength) return 'number-over-length'
      const quotient = over(a.value, b.value)
      const error = (2 * (a.error + size(quotient) * b.error)) / size(b.value)
      return result(quotient, a.isLength && !b.isLength, error)
    }
  }
}

function chosen(a: Result, b: Result, which: 'min' | 'max'): Result {
  const first = less(a.value, b.value) === (which === 'min')
  return result(first ? a.value : b.value, a.isLength || b.isLength, Math.max(a.error, b.error))
}

function rounded(a: Result, step: Result): Result | RefusedAs {
  if (size(step.value) <= 1e3 * step.error && step.error > 0) return 'too-close'
  if (step.value.over <= 0n) return 'step-not-positive'
  const steps = over(a.value, step.value)
  const error = (2 * (a.error + size(steps) * step.error)) / size(step.value) + 4 * roundOff * size(steps)
  const part = Math.abs(size(steps) - Math.floor(size(steps)) - 0.5)
  if (part <= 10 * error) return 'too-close'
  const whole = rational(nearestWhole(steps))
  return result(times(whole, step.value), a.isLength || step.isLength, size(whole) * step.error)
}
