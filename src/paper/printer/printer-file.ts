import { mostError } from './measure-printer.ts'
import type { Printer } from './printer.ts'

/** The version of the file that printers are kept in. */
const version = 1

/** Far more printers than a shop has. */
const mostPrinters = 200

/** Printers as the text of a file, in the order of their names. */
export function writePrinters(printers: readonly Printer[]): string {
  const sorted = printers.toSorted((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0))
  return `${JSON.stringify({ paperjig: version, printers: sorted }, null, 2)}\n`
}

/** The printers in the text of a file; nothing where it is no such file. Nothing in it is trusted. */
export function readPrinters(text: string): readonly Printer[] | undefined {
  const file = parsed(text)
  if (!isRecord(file) || file.paperjig !== version || !Array.isArray(file.printers)) return undefined
  const printers: readonly unknown[] = file.printers
  if (printers.length > mostPrinters || !printers.every(isPrinter)) return undefined
  return printers.map(({ name, across, along, lean }) => ({ name, across, along, lean }))
}

/** The printers with one more, which takes the place of one of the same name. */
export function withPrinter(printers: readonly Printer[], printer: Printer): readonly Printer[] {
  return [...printers.filter(({ name }) => name !== printer.name), printer]
}

/** Whether a text can be the name of a printer: it stands on every page that is corrected for it. */
export function isPrinterName(name: string): boolean {
  return /^[\p{L}\p{N}\p{P}\p{S} ]{1,40}$/u.test(name) && name.trim() !== ''
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null
}

function isPrinter(value: unknown): value is Printer {
  if (!isRecord(value) || typeof value.name !== 'string' || !isPrinterName(value.name)) return false
  // the readings were held to their limit; what is calculated from them may be a hair beyond it
  const near = (share: unknown, wanted: number): boolean =>
    typeof share === 'number' && Math.abs(share - wanted) <= 2 * mostError
  return near(value.across, 1) && near(value.along, 1) && near(value.lean, 0)
}
