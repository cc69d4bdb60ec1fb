import { expect, test } from 'vitest'
import { readDimensions } from '../../src/length/read-dimensions.ts'
import { value } from './reading.ts'

test.each([
  ['6 7/8 x 1 5/16 x board', ['6 7/8', '1 5/16', 'board']],
  ['7/8 x board', ['7/8', 'board']],
  ['6 X 2', ['6', '2']],
  ['6 × 2 × 1', ['6', '2', '1']],
  ['  6   x 2  ', ['6', '2']],
  ['2 * gauge x (2 × 3) x max(board, 1/2)', ['2 * gauge', '(2 × 3)', 'max(board, 1/2)']],
  ['~6 x unknown x 1/2', ['~6', 'unknown', '1/2']],
  ['1\' 4 1/2" x 25.4 mm', ['1\' 4 1/2"', '25.4 mm']],
])('"%s" is %j, each with its place in the text', (text, wanted) => {
  const dimensions = value(readDimensions(text))
  expect(dimensions.map(({ from, to }) => text.slice(from, to))).toEqual(wanted)
  expect(dimensions.map(({ size }) => size.written)).toEqual(wanted)
})

test('a ~ belongs to the size that it stands before, and to no other', () => {
  const [length, width] = value(readDimensions('~6 x 2'))
  expect(length?.size).toMatchObject({ scaled: true })
  expect(width?.size).toMatchObject({ scaled: false })
})
