import type { Unit } from '../../length/unit.ts'
import type { Leaf } from '../../yaml/document/tree.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import type { Fail } from '../../yaml/schema/reader.ts'
import type { Setting } from './setting.ts'

/** A setting that is one value. */
export function value<T>(
  wanted: string,
  read: (node: Leaf, unit: Unit, fail: Fail) => T | undefined,
  write: (value: T, unit: Unit) => string,
): Setting<T> {
  return {
    reader: unit =>
      leaf(wanted, (node, fail) => {
        const found = read(node, unit, fail)
        return found === undefined ? undefined : () => found
      }),
    write,
  }
}
