import type { FindingOf } from '../finding/finding.ts'
import { evaluate } from '../length/evaluate.ts'
import { readSize } from '../length/read-size.ts'
import { emptyScope } from '../length/scope.ts'
import type { Unit } from '../length/unit.ts'

/** What a length that is asked for may be; millimetres, both ends allowed. */
export type LengthChoice = {
  /** What it is called in a message: "margin". */
  readonly name: string
  readonly least: number
  readonly most: number
  /** What a bare number is in. */
  readonly unit: Unit
}

/** A length asked for, such as `6 mm` or `1/4 in`, in millimetres; or why it cannot be meant. */
export function chooseLength(
  text: string,
  { name, least, most, unit }: LengthChoice,
): { readonly mm: number } | { readonly finding: FindingOf<'unusable-length'> } {
  const read = readSize(text)
  const size = read.ok && read.value.kind === 'size' ? read.value : undefined
  const length = size && evaluate(size, emptyScope, unit)
  const mm = length?.ok && length.value.kind === 'length' ? length.value.mm : undefined
  if (mm !== undefined && mm >= least && mm <= most) return { mm }
  return {
    finding: {
      rule: 'unusable-length',
      severity: 'error',
      places: [],
      limit: { value: most, unit: 'mm' },
      facts: { name, found: text, least: { value: least, unit: 'mm' } },
    },
  }
}
