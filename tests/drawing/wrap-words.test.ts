import fc from 'fast-check'
import { expect, test } from 'vitest'
import { wrapWords } from '../../src/drawing/wrap-words.ts'
import { layOut } from '../../src/text/lay-out.ts'
import { plain, type Words } from '../../src/text/words.ts'
import { fonts } from '../sheet/sheets-of.ts'

const half = { over: '1', under: '2' } as const
const widthOf = (words: Words) => layOut(fonts.regular, words, 3.5).width
const wrapped = (words: Words, width: number) => wrapWords(words, fonts.regular, 3.5, width)

test('words that fit are one line as they are', () => {
  const words: Words = ['bore ', half, '", through']
  expect(wrapped(words, 200)).toEqual([words])
})

test('a longer line is broken at a blank, and a fraction stays with what touches it', () => {
  const first: Words = ['bore ', half, '",']
  const lines = wrapped([...first.slice(0, -1), '", through and through'], widthOf(first) + 1)
  expect(lines.map(plain)).toEqual(['bore 1/2",', 'through', 'and', 'through'].slice(0, lines.length))
  expect(lines[0]!.some(word => word === half)).toBe(true)
})

test('a name that is too long is broken after its hyphens, and only then', () => {
  const name = 'plate-of-the-left-side'
  expect(wrapped([`${name} up`], widthOf([name])).map(plain)).toEqual([name, 'up'])
  expect(wrapped([`${name} up`], widthOf(['plate-of-the-'])).map(plain)).toEqual([
    'plate-of-the-',
    'left-side up',
  ])
})

test('no line is wider than asked for unless it has no blank, and nothing is lost', () => {
  const word = fc.oneof(fc.stringMatching(/^[a-z]{1,6}$/), fc.constant(half), fc.constant(' '))
  fc.assert(
    fc.property(
      fc.array(word, { minLength: 1, maxLength: 30 }),
      fc.integer({ min: 5, max: 80 }),
      (words, width) => {
        const lines = wrapped(words, width)
        const letters = (text: string) => text.replaceAll(' ', '')
        expect(letters(lines.map(plain).join(''))).toBe(letters(plain(words)))
        for (const line of lines) {
          const oneWord = !line.some(part => typeof part === 'string' && part.includes(' '))
          expect(widthOf(line) <= width || oneWord).toBe(true)
        }
      },
    ),
  )
})
