import type { Finding } from '../finding/finding.ts'
import type { Texts } from '../finding/report/texts.ts'
import type { LengthStyle } from '../length/precision.ts'

/** What was found on the way, with what it takes to report it: the texts that it speaks of, and how to show lengths. */
export type Found = {
  readonly findings: readonly Finding[]
  readonly texts: Texts
  readonly style: LengthStyle
}
