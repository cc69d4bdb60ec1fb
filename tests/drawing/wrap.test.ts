import fc from 'fast-check'
import { expect, test } from 'vitest'
import { wrap } from '../../src/drawing/wrap.ts'
import { layOut } from '../../src/text/lay-out.ts'
import { fonts } from '../sheet/sheets-of.ts'

const widthOf = (text: string) => layOut(fonts.regular, [text], 2.5).width
const wrapped = (text: string, width: number, mostLines?: number) =>
  wrap(text, fonts.regular, 2.5, width, mostLines)

test('a text that fits is one line, and none is none', () => {
  expect(wrapped('Pier railing', 100)).toEqual(['Pier railing'])
  expect(wrapped('', 100)).toEqual([])
  expect(wrapped('   ', 100)).toEqual([])
})

test('a longer one is broken at blanks, as late as can be', () => {
  const width = widthOf('one two three')
  expect(wrapped('one two three four', width)).toEqual(['one two three', 'four'])
  expect(wrapped('one two three four', width - 0.01)).toEqual(['one two', 'three four'])
})

test('a word wider than the line is cut short', () => {
  const [line, ...others] = wrapped('incomprehensibilities', widthOf('incomp…') + 0.01)
  expect([line, others]).toEqual(['incomp…', []])
})

test('a text of more lines than allowed ends with a sign that something is left out', () => {
  const lines = wrapped('a b c d e f g h', widthOf('a b'), 2)
  expect(lines).toHaveLength(2)
  expect(lines[1]).toMatch(/…$/)
})

test('whatever the text, no line is wider than allowed and nothing that fits is lost', () => {
  const words = fc.array(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 8 }), {
    minLength: 20,
    maxLength: 60,
  })
  fc.assert(
    fc.property(words, fc.double({ min: 12, max: 80, noNaN: true }), (list, width) => {
      const text = list.join(' ')
      const lines = wrapped(text, width)
      expect(lines.length).toBeLessThanOrEqual(12)
      for (const line of lines) if (line !== '…') expect(widthOf(line)).toBeLessThanOrEqual(width)
      const kept = lines.join(' ')
      if (!kept.includes('…'))
        expect(kept).toBe(
          text
            .split(' ')
            .filter(w => w !== '')
            .join(' '),
        )
    }),
  )
})
