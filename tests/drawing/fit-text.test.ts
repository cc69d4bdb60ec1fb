import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fitText } from '../../src/drawing/fit-text.ts'
import { layOut } from '../../src/text/lay-out.ts'
import { bundledFonts } from '../text/bundled-font.ts'

const { regular: font } = bundledFonts()
const widthOf = (text: string) => layOut(font, [text], 2.5).width

test('a text that fits is left as it is', () => {
  expect(fitText(font, 'Pier railing', 2.5, widthOf('Pier railing'))).toBe('Pier railing')
})

test('a text that does not fit is cut down to the most letters that do, and says so', () => {
  const text = 'Pier railing for the eastern landing stage'
  const room = widthOf('Pier railing…')
  expect(fitText(font, text, 2.5, room)).toBe('Pier railing…')
  expect(fitText(font, text, 2.5, room - 0.001)).toBe('Pier railin…')
})

test('no blank stands before the sign that something is left out', () => {
  expect(fitText(font, 'Pier railing', 2.5, widthOf('Pier …') + 0.01)).toBe('Pier…')
})

test('a letter of two halves is kept whole or left out', () => {
  const text = '🚞🚞🚞🚞🚞🚞'
  for (let room = 0; room < 60; room += 1) {
    expect(fitText(font, text, 2.5, room)).toMatch(/^(🚞)*…?$/u)
  }
})

test('whatever the text and the width, the result fits or is nothing but the sign', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 80 }),
      fc.double({ min: 0, max: 60, noNaN: true }),
      (text, room) => {
        const fitted = fitText(font, text, 2.5, room)
        if (fitted !== '…') expect(widthOf(fitted)).toBeLessThanOrEqual(room)
      },
    ),
  )
})

test('a text of a million letters is cut down without trying them all', () => {
  expect(fitText(font, 'i'.repeat(1_000_000), 2.5, 1000).length).toBeLessThan(3000)
})
