import { excerpt } from '../../finding/visible.ts'
import { evaluate } from '../../length/evaluate.ts'
import { readSize } from '../../length/read-size.ts'
import { emptyScope } from '../../length/scope.ts'
import { fault } from '../../yaml/fault.ts'
import { lengthText } from './length-text.ts'
import type { Setting } from './setting.ts'
import { value } from './value.ts'

/** So many times something, such as 1 or 1/2: a number without a unit, at most `most`. */
export function share(most: number): Setting<number> {
  const wanted = `a number from 0 to ${most}, such as 1/2`
  return value(
    wanted,
    ({ text, source }, _, fail) => {
      const written = /^[\d ./]+$/.test(text) ? readSize(text) : undefined
      // a bare number in millimetres is the number itself
      const calculated = written?.ok ? evaluate(written.value, emptyScope, 'mm') : undefined
      const number = calculated?.ok && calculated.value.kind === 'length' ? calculated.value.mm : undefined
      if (number !== undefined && number <= most) return number
      return void fail(fault('not-a-count', source, { found: excerpt(text), wanted }))
    },
    number => lengthText(number, 'mm'),
  )
}
