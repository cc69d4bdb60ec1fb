import { expect, test } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { plain } from '../../../src/text/words.ts'
import { papersOf, said, textsOf } from '../sheets-of.ts'

const block = (names: readonly [part: string, first: string, second: string], length: number): string => {
  const [part, first, second] = names
  return `paperjig: 1
title: Loom
units: mm
parts:
  ${part}:
    size: ${length} x 44 x 5
    cuts:
      - { hole: ${first}, at: { left: 10, bottom: 10 }, diameter: 2 }
      - { hole: ${second}, at: { right: 10, bottom: 10 }, diameter: 3 }
`
}

const longNames = [
  'felt-washer-plate-of-the-left-side',
  'the-first-of-the-long-names-of-holes',
  'the-second-of-the-long-names',
] as const

/** The bold lines over the ruler, from the top. */
const headingOf = ({ marks }: Pick<Drawing, 'marks'>) =>
  textsOf(marks)
    .filter(({ subject, weight }) => subject === 'strip' && weight === 'bold')
    .toSorted((a, b) => b.at.y - a.at.y)

test('long names are broken over lines: a strip says whose it is and which face is up, and is hardly longer than its part', () => {
  const [strip] = papersOf(block(longNames, 82), 'strip')
  const onPaper = strip!.large!.drawing
  const heading = headingOf(onPaper)
    .map(({ words }) => plain(words))
    .join(' ')
    .replaceAll('- ', '-')
  for (const name of [...longNames, 'face side (front) up']) expect(heading).toContain(name)
  const { left, right } = onPaper.bounds
  expect(right - left).toBeLessThan(82 * 1.75)
})

test('a name that has nowhere to be broken is cut short, and the face that is up is said all the same', () => {
  const name = 'x'.repeat(60)
  const [strip] = papersOf(block([name, 'a', 'b'], 82), 'strip')
  const { bounds, marks } = strip!.large!.drawing
  expect(said({ marks }).some(line => /^x+…$/.test(line))).toBe(true)
  expect(said({ marks })).toContain('face side (front) up')
  expect(bounds.right - bounds.left).toBeLessThan(82 * 1.75)
})

test('a line that is broken stands by itself, so that it is read on in the next line', () => {
  const [strip] = papersOf(block(longNames, 170), 'strip')
  const { marks } = strip!.large!.drawing
  const lines = marks.flatMap(m => (m.kind === 'text' && m.subject === 'strip' ? [m] : []))
  const bold = headingOf(strip!.large!.drawing)
  expect(bold.length).toBeGreaterThan(1)
  for (const { at } of bold) expect(lines.filter(other => other.at.y === at.y)).toHaveLength(1)
})
