import { evaluate } from '../../length/evaluate.ts'
import type { LengthFault } from '../../length/fault.ts'
import { readSize } from '../../length/read-size.ts'
import { emptyScope } from '../../length/scope.ts'
import type { Unit } from '../../length/unit.ts'
import type { Leaf } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import type { Fail } from '../../yaml/schema/reader.ts'
import { sizeFault } from '../../yaml/schema/size.ts'
import { lengthText } from './length-text.ts'
import type { Setting } from './setting.ts'
import { value } from './value.ts'

/** From the least to the largest, in millimetres, both allowed. */
export type Range = { readonly least: number; readonly largest: number }

/** A length within a range; `what` names it for the maker. */
export function length(what: string, range: Range): Setting<number> {
  return value(
    'a size, such as 1/8',
    (node, unit, fail) => lengthIn(node, unit, what, range, fail),
    lengthText,
  )
}

/** The length that a text, which is all of a value or a piece of it, comes to. */
export function lengthIn(
  node: Leaf,
  unit: Unit,
  what: string,
  range: Range,
  fail: Fail,
  piece: { readonly from: number; readonly text: string } = { from: 0, text: node.text },
): number | undefined {
  const { from, text } = piece
  const refuse = (found: LengthFault): undefined =>
    void fail(sizeFault({ ...found, from: found.from + from, to: found.to + from }, node))
  const written = readSize(text)
  if (!written.ok) return refuse(written.fault)
  const calculated = evaluate(written.value, emptyScope, unit)
  if (!calculated.ok) return refuse(calculated.fault)
  if (calculated.value.kind === 'unknown') {
    const wanted = 'a size; what is left out is as in the shop that the program assumes'
    return refuse({ code: 'unknown-alone', from: 0, to: text.length, found: text, wanted })
  }
  const { mm } = calculated.value
  if (mm >= range.least && mm <= range.largest) return mm
  const quantity = (size: number) => ({ value: size, unit: 'mm' as const })
  const facts = {
    what,
    size: quantity(mm),
    least: quantity(range.least),
    largest: quantity(range.largest),
  }
  return void fail(fault('setting-out-of-range', node.source, facts))
}
