import type { FindingOf } from '../finding/finding.ts'
import { nearestName } from '../length/nearest-name.ts'
import type { Printer } from '../paper/printer/printer.ts'

/** The printer of a name among those that were measured, or why there is none such. */
export function knownPrinter(
  name: string,
  printers: readonly Printer[],
): { readonly printer: Printer } | { readonly finding: FindingOf<'unknown-printer'> } {
  const printer = printers.find(one => one.name === name)
  if (printer !== undefined) return { printer }
  const names = printers.map(one => one.name)
  const nearest = nearestName(name, names)
  return {
    finding: {
      rule: 'unknown-printer',
      severity: 'error',
      places: [],
      facts: { found: name, allowed: names.join(', '), ...(nearest === undefined ? {} : { nearest }) },
    },
  }
}
