import type { Unit } from '../../length/unit.ts'
import type { Reader } from '../../yaml/schema/reader.ts'

/** Puts what the file says in place of what was there. */
export type Update<T> = (before: T) => T

/**
 * How one figure of the shop, or a group of them, stands in the file. Reader and writer lie side by side so that
 * what is written reads back the same.
 */
export type Setting<T> = {
  /** `unit` is that of the file: what a bare number means. */
  readonly reader: (unit: Unit) => Reader<Update<T>>
  readonly write: (value: T, unit: Unit) => Written
}

/** A value on the line of its key, or lines of their own below it, without their indentation. */
export type Written = string | readonly string[]
