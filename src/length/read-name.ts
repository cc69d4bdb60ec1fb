import { isFunctionName } from './expression.ts'
import { faultAt, type Read, read, refused } from './fault.ts'
import { isSeparator } from './misplaced.ts'
import { unitOfWord } from './unit.ts'

/**
 * Reads a name that a plan gives to a size, as formulas can use it: letters, digits and `_`, a letter first, and
 * no unit, function, `x` or `unknown`, which mean something else in a formula.
 */
export function readName(text: string): Read<string> {
  const whole = { from: 0, to: text.length }
  if (text.length > 60 || !/^\p{L}[\p{L}0-9_]*$/u.test(text)) {
    return refused(faultAt(text, whole, 'not-a-name', 'letters, digits and _, a letter first, at most 60'))
  }
  if (isFunctionName(text) || isSeparator(text) || text === 'unknown' || unitOfWord(text) !== undefined) {
    return refused(faultAt(text, whole, 'reserved-name', 'a name that means nothing else in a formula'))
  }
  return read(text)
}
