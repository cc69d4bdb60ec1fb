import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { layOut, reading } from '../../src/text/lay-out.ts'
import type { Words } from '../../src/text/words.ts'
import { plain } from '../../src/text/words.ts'
import { bundledFont } from './bundled-font.ts'

const font = bundledFont()
const height = 3.5

describe('a line of text', () => {
  test('has capitals of the height asked for', () => {
    const { box, ascent } = layOut(font, ['H'], height)
    expect(box.bottom).toBeCloseTo(0, 9)
    expect(box.top).toBeCloseTo(height, 9)
    expect(ascent).toBeCloseTo(height, 9)
  })

  test('is as wide as its letters, without kerning or joined letters', () => {
    const letters = Array.from('AVATo fi 11', letter => layOut(font, [letter], height).width)
    const sum = letters.reduce((a, b) => a + b, 0)
    expect(layOut(font, ['AVATo fi 11'], height).width).toBeCloseTo(sum, 9)
  })

  test('has figures of one width and of the height of capitals, so that columns stand', () => {
    const figures = Array.from('0123456789', figure => layOut(font, [figure], height))
    expect(new Set(figures.map(f => f.width.toFixed(9))).size).toBe(1)
    for (const { box } of figures) expect(box.top - box.bottom).toBeGreaterThan(0.99 * height)
  })

  test('takes room for the tail of a p below the base line, whatever its letters', () => {
    expect(layOut(font, ['H'], height).descent).toBeCloseTo(layOut(font, ['p'], height).descent, 9)
    expect(layOut(font, ['p'], height).descent).toBeCloseTo(-layOut(font, ['p'], height).box.bottom, 9)
  })

  test('grows with its height and with nothing else', () => {
    const words: Words = ['⌀ ', { whole: '1', over: '3', under: '8' }]
    const [one, two] = [layOut(font, words, 1), layOut(font, words, 2)]
    expect(two.width).toBeCloseTo(2 * one.width, 9)
    expect(two.box.top).toBeCloseTo(2 * one.box.top, 9)
  })

  test('of no words has a flat box at its start', () => {
    expect(layOut(font, [], height).box).toEqual({ left: 0, bottom: 0, right: 0, top: 0 })
    expect(layOut(font, [' '], height).box).toEqual({ left: 0, bottom: 0, right: 0, top: 0 })
  })
})

describe('a stacked fraction', () => {
  const stacked = layOut(font, [{ over: '1', under: '2' }], height)

  test('has figures of seven tenths of the height of capitals', () => {
    // of the whole height two figures, the bar, which is as thick as a minus, and two gaps (0.12)
    const minus = layOut(font, ['−'], height).box
    const bar = minus.top - minus.bottom
    const figures = stacked.box.top - stacked.box.bottom - bar - 2 * 0.12 * height
    expect(figures / 2).toBeCloseTo(0.7 * height, 2)
  })

  test('has its bar in the middle of the capitals', () => {
    expect((stacked.box.top + stacked.box.bottom) / 2).toBeCloseTo(height / 2, 2)
  })

  test('stands farther from its whole number than a reader needs to keep them apart', () => {
    const one = layOut(font, ['1'], height)
    const { glyphs } = layOut(font, [{ whole: '1', over: '3', under: '16' }], height)
    const fraction = glyphs.at(-1)!
    // poppler parts words at 0.15 of an em
    expect(fraction.x - one.width).toBeGreaterThan(0.15 * one.size)
    expect(fraction.glyph.reads).toBe('3/16')
  })

  test('reads as it is spoken', () => {
    expect(reading(layOut(font, [{ whole: '2', over: '1', under: '2' }, '"'], height))).toBe('2 1/2"')
  })

  test('is also what a fraction with a code point of its own becomes', () => {
    const one = layOut(font, ['⅜'], height)
    expect(one.width).toBeCloseTo(layOut(font, [{ over: '3', under: '8' }], height).width, 9)
    expect(reading(one)).toBe('⅜')
  })
})

describe('what the font lacks', () => {
  test('is shown as its code and reported', () => {
    const laid = layOut(font, ['a中b'], height)
    expect(reading(laid)).toBe('a[U+4E2D]b')
    expect(laid.missing).toEqual(['U+4E2D'])
  })

  test('is also reported from within a fraction', () => {
    const laid = layOut(font, [{ whole: '中', over: '文', under: '2' }], height)
    expect(laid.missing).toEqual(['U+4E2D', 'U+6587'])
  })

  test.each([
    ['a control character', 'a\u0007b', 'a[U+0007]b'],
    ['a line end', 'a\nb', 'a[U+000A]b'],
    ['a character that turns the direction', 'a\u202Eb', 'a[U+202E]b'],
    ['a soft hyphen', 'a\u00ADb', 'a[U+00AD]b'],
    ['a byte order mark', '\uFEFFa', '[U+FEFF]a'],
    ['half of a pair', 'a\uD83Db', 'a[U+D83D]b'],
    ['an emoji', '🪚', '[U+1FA9A]'],
    ['Hebrew, in the order in which it was written', 'אבx', '[U+05D0][U+05D1]x'],
    ['an accent on a letter that has none of its own', 'q\u0301', 'q[U+0301]'],
    ['an accent that joins its letter', 'e\u0301', 'é'],
  ])('%s', (_, text, shown) => {
    expect(reading(layOut(font, [text], height))).toBe(shown)
  })

  test('the signs of the shop are all there', () => {
    const signs = '⌀×°″′≈~−–—±≤≥←→↑↓↔↕½¼¾⅛⅜⅝⅞“”‘’•…€µ²³'
    expect(layOut(font, [signs], height).missing).toEqual([])
  })

  test('letters of Europe are all there', () => {
    expect(layOut(font, ['ÅÄÖåäöÆØæøßÉéÈèÊêÇçÑñŁłŠšŽžŐőĞğİıЖжДдΩωΔδ'], height).missing).toEqual([])
  })

  test('nothing that was written is ever dropped', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), text => {
        const laid = layOut(font, [text], height)
        let read = reading(laid)
        for (const letter of text.normalize('NFC')) {
          const code = letter.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')
          const shown = read.startsWith(letter) && laid.missing[0] !== `U+${code}` ? letter : `[U+${code}]`
          expect(read.startsWith(shown)).toBe(true)
          read = read.slice(shown.length)
        }
        expect(read).toBe('')
      }),
    )
  })
})

test('the plain words of a line are what it reads as, where the font has every letter', () => {
  const words: Words = [
    'Bore ',
    { over: '5', under: '64' },
    ', ',
    { whole: '1', over: '1', under: '4' },
    ' deep',
  ]
  expect(reading(layOut(font, words, height))).toBe(plain(words))
})
