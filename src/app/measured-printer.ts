import type { Finding, FindingOf } from '../finding/finding.ts'
import type { Quantity } from '../finding/quantity.ts'
import { evaluate } from '../length/evaluate.ts'
import { readSize } from '../length/read-size.ts'
import { emptyScope } from '../length/scope.ts'
import { degrees } from '../number/degrees.ts'
import { measurePrinter, type ReadingFault } from '../paper/printer/measure-printer.ts'
import type { Printer } from '../paper/printer/printer.ts'
import { isPrinterName } from '../paper/printer/printer-file.ts'
import { type Bars, readBars } from '../paper/printer/scale-lengths.ts'

/** What was read off a scale sheet, as it was typed. A length may have any unit; a bare number is millimetres. */
export type TypedReadings = {
  readonly name: string
  readonly across: string
  readonly along: string
  /** The bars that the sheet has, `180x240`, unless they are those of Letter and A4. */
  readonly bars?: string
  /** From the lower left to the upper right corner of the square, and the other one. */
  readonly diagonals?: readonly [string, string]
}

/** What a scale sheet says of a printer, to be kept and given to a print; or why it cannot be. */
export function measuredPrinter(
  typed: TypedReadings,
): { readonly printer: Printer } | { readonly findings: readonly Finding[] } {
  const findings: Finding[] = []
  const add = (finding: Finding): undefined => {
    findings.push(finding)
    return undefined
  }
  const reading = (what: string, text: string): number | undefined =>
    lengthOf(text) ?? add({ ...about('reading-not-a-length'), facts: { what, found: text } })

  if (!isPrinterName(typed.name)) add({ ...about('unusable-printer-name'), facts: { found: typed.name } })
  const bars = readBars(typed.bars) ?? add({ ...about('unknown-bars'), facts: { found: typed.bars ?? '' } })
  const across = reading('across', typed.across)
  const along = reading('along', typed.along)
  const diagonals = typed.diagonals?.map((text, i) =>
    reading(i === 0 ? 'of diagonal A' : 'of diagonal B', text),
  )
  if (findings.length > 0 || bars === undefined || across === undefined || along === undefined)
    return { findings }
  const [a, b] = diagonals ?? []
  const measured = measurePrinter(typed.name.trim(), {
    bars,
    across,
    along,
    ...(a === undefined || b === undefined ? {} : { diagonals: [a, b] as const }),
  })
  return 'printer' in measured
    ? measured
    : { findings: [faultFinding(measured.fault, bars, { across, along })] }
}

function lengthOf(text: string): number | undefined {
  const read = readSize(text)
  if (!read.ok || read.value.kind !== 'size') return undefined
  const length = evaluate(read.value, emptyScope, 'mm')
  return length.ok && length.value.kind === 'length' && length.value.mm > 0 ? length.value.mm : undefined
}

function faultFinding(fault: ReadingFault, bars: Bars, read: Bars): Finding {
  switch (fault.kind) {
    case 'swapped':
      return { ...about('readings-swapped'), facts: {} }
    case 'too-far':
      return {
        ...about('printer-too-far-off'),
        facts: {
          across: mm(read.across),
          along: mm(read.along),
          barAcross: mm(bars.across),
          barAlong: mm(bars.along),
          ...fault.fit,
        },
      }
    case 'lean':
      return {
        ...about('printer-leans'),
        facts: { lean: { value: Number(degrees(Math.atan(fault.lean)).toFixed(2)), unit: 'degree' } },
      }
    case 'diagonals': {
      const [first, second] = fault.wanted
      return { ...about('diagonals-disagree'), facts: { first: mm(first), second: mm(second) } }
    }
  }
}

function mm(value: number): Quantity {
  return { value, unit: 'mm' }
}

function about<R extends Finding['rule']>(rule: R): Pick<FindingOf<R>, 'rule' | 'severity' | 'places'> {
  return { rule, severity: 'error', places: [] }
}
