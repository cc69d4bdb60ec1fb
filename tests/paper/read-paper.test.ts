import { expect, test } from 'vitest'
import { papers } from '../../src/paper/papers.ts'
import { readPaper } from '../../src/paper/read-paper.ts'

function sides(text: string, unit: 'inch' | 'mm' = 'mm') {
  const read = readPaper(text, unit)
  return 'paper' in read ? [read.paper.width, read.paper.height] : read.fault
}

test.each(['letter', 'Letter', ' A4 ', 'tabloid'])('"%s" is a paper by its name', text => {
  expect(readPaper(text, 'inch')).toEqual({ paper: papers[text.trim().toLowerCase() as 'a4'] })
})

test.each<[string, 'inch' | 'mm', readonly [number, number]]>([
  ['210x297mm', 'inch', [210, 297]],
  ['210 x 297 mm', 'inch', [210, 297]],
  ['210mm x 297mm', 'inch', [210, 297]],
  ['21cm x 297mm', 'inch', [210, 297]],
  ['8.5x11in', 'mm', [215.9, 279.4]],
  ['8.5X11IN', 'mm', [215.9, 279.4]],
  ['8 1/2 × 11 in', 'mm', [215.9, 279.4]],
  ['8.5"x11"', 'mm', [215.9, 279.4]],
  ["1' x 2'", 'mm', [304.8, 609.6]],
  // bare numbers are in the plan's unit
  ['8.5x11', 'inch', [215.9, 279.4]],
  ['500x1100', 'mm', [500, 1100]],
])('"%s" (plan in %s) is a width and a height', (text, unit, [width, height]) => {
  const found = sides(text, unit) as readonly number[]
  expect(found[0]).toBeCloseTo(width, 9)
  expect(found[1]).toBeCloseTo(height, 9)
})

test('a paper given by its sides is called as it was written', () => {
  expect(readPaper(' 500x1100mm ', 'mm')).toMatchObject({ paper: { name: '500x1100mm' } })
})

test('a misspelt name is told the nearest right one', () => {
  expect(sides('lettre')).toMatchObject({ found: 'lettre', nearest: 'letter' })
  expect(sides('A44')).toMatchObject({ nearest: 'a4' })
})

test.each([
  '',
  'x',
  '210',
  '210x',
  'x297mm',
  '210x297x10mm',
  '210 by 297',
  'NaNx297mm',
  '1e3x1e3mm',
  'unknown x 297mm',
  'board x 297mm',
  '__proto__',
  'constructor',
])('"%s" is no paper, and the fault says what would be', text => {
  expect(sides(text)).toMatchObject({ found: text, wanted: expect.stringContaining('letter') })
})

/** The greatest side is that of PDF: 14,400 units of 1/72 in. Source: ISO 32000-1, annex C, from memory. */
test.each([
  ['99x300mm', false],
  ['100x300mm', true],
  ['0x300mm', false],
  ['300x5080mm', true],
  ['300x5081mm', false],
  ['200x200in', true],
])('%s is between the smallest and the largest paper: %s', (text, fits) => {
  const read = sides(text)
  if (fits) expect(read).toHaveLength(2)
  else expect(read).toEqual({ found: text, wanted: 'sides from 100 mm to 5080 mm' })
})
