import { expect, test } from 'vitest'
import { lying, papers, upright } from '../../src/paper/papers.ts'

/** Sources: ISO 216 for the A sizes in mm; US sizes in inches as sold (ANSI/ASME Y14.1 for Letter and Tabloid, from memory). 1 in = 25.4 mm. */
test.each([
  ['a5', 148, 210],
  ['a4', 210, 297],
  ['a3', 297, 420],
  ['letter', 8.5 * 25.4, 11 * 25.4],
  ['legal', 8.5 * 25.4, 14 * 25.4],
  ['tabloid', 11 * 25.4, 17 * 25.4],
] as const)('%s is %d by %d mm', (name, width, height) => {
  expect(papers[name]).toMatchObject({ width, height })
})

test('a paper is turned to lie or to stand, whichever way it is given', () => {
  const sheet = { name: '9x4in', width: 228.6, height: 101.6 }
  expect(lying(sheet)).toEqual(sheet)
  expect(upright(sheet)).toEqual({ name: '9x4in', width: 101.6, height: 228.6 })
  expect(upright(lying(papers.a4))).toEqual(papers.a4)
})
