import { describe, expect, test } from 'vitest'
import { drillSizes } from '../../src/length/drill-sizes.ts'
import { nameBit } from '../../src/length/name-bit.ts'
import { plainText } from '../../src/length/pieces.ts'
import { toMillimetres } from '../../src/length/unit.ts'

/** Source: ASME B94.11M, values as reprinted in a public code table. The sizes not here are from memory. */
const published: Readonly<Record<string, number>> = {
  '#80': 0.0135,
  '#70': 0.028,
  '#60': 0.04,
  '#52': 0.0635,
  '#50': 0.07,
  '#45': 0.082,
  '#43': 0.089,
  '#40': 0.098,
  '#36': 0.1065,
  '#30': 0.1285,
  '#29': 0.136,
  '#25': 0.1495,
  '#21': 0.159,
  '#20': 0.161,
  '#19': 0.166,
  '#16': 0.177,
  '#10': 0.1935,
  '#7': 0.201,
  '#3': 0.213,
  '#1': 0.228,
  'letter A': 0.234,
  'letter D': 0.246,
  'letter F': 0.257,
  'letter I': 0.272,
  'letter N': 0.302,
  'letter Q': 0.332,
  'letter U': 0.368,
  'letter Z': 0.413,
}

test.each(Object.entries(published))('a drill %s is %d in', (name, inches) => {
  expect(drillSizes.find(drill => drill.name === name)?.inches).toBe(inches)
  expect(plainText(nameBit(toMillimetres(inches, 'inch')))).toBe(`${name} (${inches}")`)
})

test('there are 80 numbers and 26 letters, from the finest number to Z each larger than the one before', () => {
  expect(drillSizes).toHaveLength(106)
  const numbers = drillSizes.slice(0, 80).reverse()
  const sizes = [...numbers, ...drillSizes.slice(80)].map(drill => drill.inches)
  for (let i = 1; i < sizes.length; i++) expect(sizes[i]!).toBeGreaterThan(sizes[i - 1]!)
})

describe('a bit is named by its own size', () => {
  test.each([
    [6.35, '1/4"', 'a letter E is 1/4 too, and the fraction is the plainer name'],
    [1.984375, '5/64"', '64ths'],
    [31.75, '1 1/4"', 'above an inch too'],
    [25.4, '1"', 'a whole inch'],
    [6, '6 mm', 'not ≈ 15/64'],
    [5.1, '5.1 mm', 'not the number 7 that is 0.006 mm larger'],
    [35, '35 mm', 'a hinge cup'],
    [2.2606, '#43 (0.089")', 'a number'],
    [25.4 / 128, '0.198 mm', 'there is no bit of a 128th'],
    [0.1, '0.1 mm', ''],
  ])('%d mm is %s (%s)', (mm, wanted) => {
    expect(plainText(nameBit(mm))).toBe(wanted)
  })

  test('with its fraction apart', () => {
    expect(nameBit(31.75)).toEqual([{ whole: '1', over: '1', under: '4' }, '"'])
  })
})
