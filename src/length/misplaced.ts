import type { LengthFault } from './fault.ts'
import { nearestName } from './nearest-name.ts'
import { isSpace, type Token } from './token.ts'
import { unitNames } from './unit.ts'

/** What is wrong with a piece of a size that stands where it cannot. */
export type Misplaced = Pick<LengthFault, 'code' | 'wanted' | 'nearest'>

/** The letter between the sizes of `7 x 2`, which is no name. */
export function isSeparator(word: string): boolean {
  return word === 'x' || word === 'X'
}

/** A piece where a number, a name or an opening bracket had to stand. */
export function notAValue(token: Token): Misplaced {
  if (token.kind === 'tilde') return tildeFirst
  if (token.kind === 'unit') return { code: 'unit-misplaced', wanted: 'a number before the unit' }
  const where = token.kind === 'end' ? 'after this' : 'here'
  return { code: 'missing-value', wanted: `a number or a name ${where}` }
}

/** A piece after a whole value, where a sign, a closing bracket or the end had to stand. */
export function notTheEnd(text: string, token: Token, before: Token, after: Token): Misplaced {
  switch (token.kind) {
    case 'comma':
      if (betweenDigits(text, token)) return decimalComma
      return { code: 'stray-comma', wanted: 'commas only between the values of a function' }
    case 'tilde':
      return tildeFirst
    case 'unit':
      return { code: 'unit-misplaced', wanted: 'a unit only straight after a number' }
    case 'word':
      return strayWord(text, token, before, after)
    default:
      if (token.kind === 'bracket' && token.bracket === ')') {
        return { code: 'unopened', wanted: 'a ( for this )' }
      }
      return {
        code: 'missing-operator',
        wanted: 'a sign (+ - * /) before this; a fraction has no spaces: 2 1/2',
      }
  }
}

const tildeFirst: Misplaced = { code: 'tilde-first', wanted: 'the ~ at the very beginning of the size' }

/** A comma as some countries write decimals. Between values it needs a space, lest one be taken for two. */
export const decimalComma: Misplaced = {
  code: 'decimal-comma',
  wanted: 'a point for decimals (12.5), nothing between thousands, and a space after a comma between values',
}

export function betweenDigits(text: string, { from, to }: Token): boolean {
  return /\d/.test(text.charAt(from - 1)) && /\d/.test(text.charAt(to))
}

function strayWord(text: string, token: Token & { kind: 'word' }, before: Token, after: Token): Misplaced {
  const { word, from, to } = token
  const apart = isSpace(text, from - 1) && (isSpace(text, to) || after.kind === 'end')
  if (isSeparator(word) && apart) return { code: 'several-sizes', wanted: 'one size; x stands between sizes' }
  if (/^[xX]\d*$/.test(word)) return { code: 'x-needs-spaces', wanted: 'spaces on both sides of x' }
  const nearest = before.kind === 'number' ? nearestName(word, unitNames) : undefined
  if (nearest === undefined) return { code: 'missing-operator', wanted: 'a sign (+ - * /) before this' }
  return { code: 'unknown-unit', wanted: 'in, ft, mm, cm or deg; before a name a *', nearest }
}
