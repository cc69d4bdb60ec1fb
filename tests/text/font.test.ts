import { expect, test } from 'vitest'
import { loadFont } from '../../src/text/font.ts'
import { layOut } from '../../src/text/lay-out.ts'
import { fontFiles } from './bundled-font.ts'

test('files after the first are read when a letter asks for them, and not before', () => {
  const [first, ...others] = fontFiles()
  const broken = new Uint8Array(10)
  const font = loadFont([first!, broken])
  expect(layOut(font, ['latin'], 3.5).missing).toEqual([])
  expect(() => layOut(font, ['ł'], 3.5)).toThrow()
  expect(layOut(loadFont([first!, ...others]), ['ł'], 3.5).missing).toEqual([])
})

test('a font is at least one file', () => {
  expect(() => loadFont([])).toThrow('at least one file')
})

test('the bytes are left as they were given', () => {
  const [first] = fontFiles()
  const before = Uint8Array.from(first!)
  layOut(loadFont([first!]), ['Side frame'], 3.5)
  expect(Uint8Array.from(first!)).toEqual(before)
})

test('letters are as wide as the file itself says', () => {
  // advances of IBM Plex Sans Regular, in thousandths of an em, as fontkit reads them from the same file
  const font = loadFont(fontFiles())
  const widths = { A: 641, '1': 600, i: 250 }
  for (const [letter, width] of Object.entries(widths)) {
    const laid = layOut(font, [letter], 3.5)
    expect((1000 * laid.width) / laid.size).toBeCloseTo(width, 6)
  }
})
