import { expect, test } from 'vitest'
import {
  isPrinterName,
  readPrinters,
  withPrinter,
  writePrinters,
} from '../../../src/paper/printer/printer-file.ts'

const attic = { name: 'attic', across: 0.995, along: 1.002, lean: -0.001 }
const shop = { name: 'shop', across: 1, along: 1, lean: 0 }

test('printers are read back as they were written, in the order of their names', () => {
  expect(readPrinters(writePrinters([shop, attic]))).toEqual([attic, shop])
})

test('a printer that is measured again takes the place of the old one', () => {
  const again = { ...attic, across: 0.99 }
  expect(withPrinter([attic, shop], again)).toEqual([shop, again])
})

const file = (printer: object) => JSON.stringify({ paperjig: 1, printers: [printer] })

test.each([
  ['nothing', ''],
  ['no JSON', '{'],
  ['another version', JSON.stringify({ paperjig: 2, printers: [] })],
  ['a null', 'null'],
  ['a printer of twice the size', file({ ...attic, across: 2 })],
  ['a printer without a name', file({ ...attic, name: '' })],
  ['a name that would break a line', file({ ...attic, name: 'a\nb' })],
  ['a share that is a text', file({ ...attic, along: '1' })],
  ['too many printers', JSON.stringify({ paperjig: 1, printers: Array.from({ length: 201 }, () => attic) })],
])('a file with %s is not read', (_, text) => {
  expect(readPrinters(text)).toBeUndefined()
})

test('what else stands beside a printer is left out', () => {
  expect(readPrinters(file({ ...attic, run: 'rm' }))).toEqual([attic])
})

test('a name is one line of letters, figures and signs', () => {
  for (const name of ['attic', 'Büro 2', 'A-3 (laser)']) expect(isPrinterName(name)).toBe(true)
  for (const name of ['', '   ', 'a\tb', 'a\u202eb', 'x'.repeat(41)]) expect(isPrinterName(name)).toBe(false)
})
