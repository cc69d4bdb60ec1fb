import { type Expression, functionNames, functions, isFunctionName } from './expression.ts'
import { faultAt, type LengthFault, type Read, read, refused } from './fault.ts'
import {
  betweenDigits,
  decimalComma,
  isSeparator,
  type Misplaced,
  notAValue,
  notTheEnd,
} from './misplaced.ts'
import { nearestName } from './nearest-name.ts'
import { isSpace, type Token, tokens } from './token.ts'
import { toMillimetres } from './unit.ts'

/** Brackets, calls and signs inside each other; a formula that goes deeper was not written by a maker. */
const greatestDepth = 32

type Span = { readonly from: number; readonly to: number }

/**
 * Reads a formula. As usual × and ÷ bind closer than + and −, and equals go from left to right; a fraction such
 * as `3/4` is one number, so `6 / 3/4` is 8.
 *
 * A rule that fails leaves its fault in `fault` and returns nothing; every rule above it then returns nothing too.
 */
export function parse(text: string): Read<Expression> {
  const scanned = tokens(text)
  if (!scanned.ok) return scanned
  const all = scanned.value

  let position = 0
  let depth = 0
  let fault: LengthFault | undefined

  const whole = sum()
  if (whole !== undefined && peek().kind !== 'end') failAt(peek(), notTheEnd(text, peek(), peek(-1), peek(1)))
  if (fault !== undefined) return refused(fault)
  return read(whole!)

  function peek(ahead = 0): Token {
    return all[Math.min(position + ahead, all.length - 1)]!
  }

  function take(): Token {
    const token = peek()
    position += 1
    return token
  }

  function fail(span: Span, code: LengthFault['code'], wanted: string, nearest?: string): undefined {
    fault ??= faultAt(text, span, code, wanted, nearest)
    return undefined
  }

  function failAt(span: Span, { code, wanted, nearest }: Misplaced): undefined {
    return fail(span, code, wanted, nearest)
  }

  function sum(): Expression | undefined {
    let left = product()
    for (let sign = nextSign('+', '-'); left !== undefined && sign !== undefined; sign = nextSign('+', '-')) {
      if (sign.sign === '-' && !standsFree(sign)) {
        const wanted = 'spaces on both sides of a minus: 3 - 1/16; a mixed number is 3-1/16'
        return fail(sign, 'minus-unclear', wanted)
      }
      position += 1
      left = joined(left, sign.sign, product())
    }
    return left
  }

  function product(): Expression | undefined {
    let left = factor()
    for (let sign = nextSign('*', '/'); left !== undefined && sign !== undefined; sign = nextSign('*', '/')) {
      if (sign.sign === '/' && touchesFraction(sign)) {
        return fail(sign, 'division-unclear', 'spaces on both sides of a division by or of a fraction')
      }
      position += 1
      left = joined(left, sign.sign, factor())
    }
    return left
  }

  function nextSign(...wanted: readonly string[]) {
    const token = peek()
    return token.kind === 'sign' && wanted.includes(token.sign) ? token : undefined
  }

  function standsFree(sign: Token): boolean {
    return isSpace(text, sign.from - 1) && isSpace(text, sign.to)
  }

  /** `1/2/3` and `gauge/3/4` can be read two ways. */
  function touchesFraction(sign: Token): boolean {
    const before = peek(-1)
    const after = peek(1)
    const fractionBefore = before.kind === 'number' && before.fraction && before.to === sign.from
    const fractionAfter = after.kind === 'number' && after.fraction && after.from === sign.to
    return fractionBefore || fractionAfter
  }

  function joined(
    left: Expression,
    operator: '+' | '-' | '*' | '/',
    right: Expression | undefined,
  ): Expression | undefined {
    return right && { kind: 'operation', operator, left, right, from: left.from, to: right.to }
  }

  function deeper<T>(span: Span, inside: () => T | undefined): T | undefined {
    const wanted = `at most ${greatestDepth} brackets inside each other`
    if (depth === greatestDepth) return fail(span, 'too-deep', wanted)
    depth += 1
    const found = inside()
    depth -= 1
    return found
  }

  function factor(): Expression | undefined {
    const minus = nextSign('-')
    if (minus === undefined) return operand()
    position += 1
    const of = deeper(minus, factor)
    return of && { kind: 'negative', of, from: minus.from, to: of.to }
  }

  function operand(): Expression | undefined {
    const token = take()
    if (token.kind === 'number') return measured(token.value, token)
    if (token.kind === 'bracket' && token.bracket === '(') return bracketed(token)
    if (token.kind === 'word') return named(token.word, token)
    // at the end there is nothing to point at but what stands before
    const before = position > 1 ? peek(-2) : token
    return failAt(token.kind === 'end' ? before : token, notAValue(token))
  }

  function bracketed(open: Token): Expression | undefined {
    const inside = deeper(open, sum)
    if (inside === undefined) return undefined
    const close = closing(open)
    // the brackets belong to the piece that a message points at
    return close && { ...inside, from: open.from, to: close.to }
  }

  function closing(open: Token): Token | undefined {
    const token = take()
    if (token.kind === 'bracket' && token.bracket === ')') return token
    if (token.kind === 'end') return fail(open, 'unclosed', 'a ) for this (')
    return failAt(token, notTheEnd(text, token, peek(-2), peek()))
  }

  function named(word: string, token: Token): Expression | undefined {
    const open = peek()
    const called = open.kind === 'bracket' && open.bracket === '('
    if (isFunctionName(word)) {
      return called ? call(word, token) : fail(token, 'argument-count', `${word}( ) with ${counted(word)}`)
    }
    if (called) {
      const wanted = `one of ${functionNames.join(', ')}, or a * before the bracket`
      return fail(token, 'unknown-function', wanted, nearestName(word, functionNames))
    }
    if (isSeparator(word)) return fail(token, 'several-sizes', 'a size on both sides of x; x is no name')
    if (word === 'unknown') return fail(token, 'unknown-alone', 'unknown alone, or a size')
    return { kind: 'name', name: word, from: token.from, to: token.to }
  }

  function call(name: keyof typeof functions, token: Token): Expression | undefined {
    const open = take()
    const values = deeper(open, listed)
    if (values === undefined) return undefined
    const close = closing(open)
    if (close === undefined) return undefined
    const span = { from: token.from, to: close.to }
    const { fewest, most } = functions[name]
    if (values.length < fewest || values.length > most) {
      return fail(span, 'argument-count', `${name}( ) with ${counted(name)}`)
    }
    return { kind: 'call', name, arguments: values, ...span }
  }

  function listed(): readonly Expression[] | undefined {
    const values: Expression[] = []
    const first = peek()
    if (first.kind === 'bracket' && first.bracket === ')') return values
    for (;;) {
      const value = sum()
      if (value === undefined) return undefined
      values.push(value)
      const comma = peek()
      if (comma.kind !== 'comma') return values
      if (betweenDigits(text, comma)) return failAt(comma, decimalComma)
      position += 1
    }
  }

  /** A number with the unit that may follow it. */
  function measured(value: number, number: Token): Expression | undefined {
    const unit = peek()
    if (unit.kind !== 'unit') return { kind: 'number', value, from: number.from, to: number.to }
    position += 1
    const span = { from: number.from, to: unit.to }
    if (unit.unit === 'degree') return { kind: 'angle', angleDegrees: value, ...span }
    if (unit.unit === 'foot') return withInches(value, span)
    return { kind: 'length', mm: toMillimetres(value, unit.unit), ...span }
  }

  /** `1' 4 1/2"`, `1' 4`, and with the trade's hyphen `1'-4 1/2"`. */
  function withInches(feet: number, span: Span): Expression | undefined {
    const hyphen = nextSign('-')
    const joint = hyphen !== undefined && !isSpace(text, hyphen.from - 1) && !isSpace(text, hyphen.to) ? 1 : 0
    const inches = peek(joint)
    const mark = peek(joint + 1)
    const markIsInch = mark.kind === 'unit' && mark.unit === 'inch'
    // without a mark the number after feet is inches, but after a hyphen it has to say so
    const fits = inches.kind === 'number' && (markIsInch || (joint === 0 && mark.kind !== 'unit'))
    if (!fits) return { kind: 'length', mm: toMillimetres(feet, 'foot'), ...span }
    position += joint + (markIsInch ? 2 : 1)
    const mm = toMillimetres(12 * feet + inches.value, 'inch')
    return { kind: 'length', mm, from: span.from, to: markIsInch ? mark.to : inches.to }
  }
}

function counted(name: keyof typeof functions): string {
  const { fewest, most } = functions[name]
  if (most > fewest) return 'one or more values between commas'
  return fewest === 1 ? 'one value' : 'a size and the step it is rounded to'
}
