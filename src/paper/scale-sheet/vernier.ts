import { millimetresPerInch, type Unit } from '../../length/unit.ts'

/**
 * A vernier printed before the end of a bar, to read where that end lies between two lines of a rule. Its lines lie one
 * and a part of the rule's spaces apart, counted back from the end mark, so the line that meets one of the rule's
 * says how many parts the end is beyond the rule's last line.
 *
 * End at N + f spaces, lines at N + f − j·(1 + 1/n): line j meets where f = j/n. Source: by calculation.
 */
export type Vernier = {
  /** From one line of the rule to the next, in millimetres. */
  readonly space: number
  /** Parts that a space is read to. */
  readonly parts: number
}

/** Tenths of a millimetre on a rule of millimetres; 128ths of an inch on one of sixteenths. */
export const verniers: Readonly<Record<Unit, Vernier>> = {
  mm: { space: 1, parts: 10 },
  inch: { space: millimetresPerInch / 16, parts: 8 },
}

/** How far before the end mark the lines stand, from 0 for line 0, in millimetres. */
export function vernierLines({ space, parts }: Vernier): readonly number[] {
  return Array.from({ length: parts + 1 }, (_, line) => (line * space * (parts + 1)) / parts)
}
