import { expect, it } from 'vitest'
import { escapeUnseen, excerpt, quoted, visible } from '../../src/finding/visible.ts'

it('what cannot be seen is shown as its code', () => {
  expect(visible('a\u0000b')).toBe('a⟨U+0000⟩b')
  expect(visible('\u001b[31mred')).toBe('⟨U+001B⟩[31mred')
  expect(visible('one\ntwo\ttabs')).toBe('one⟨U+000A⟩two⟨U+0009⟩tabs')
  expect(visible('\u009b')).toBe('⟨U+009B⟩')
})

it('so is what would reorder or hide a text', () => {
  for (const code of ['202A', '202E', '2066', '2069', '200E', '200B', '00AD', 'FEFF', '2028', '061C']) {
    const character = String.fromCharCode(Number.parseInt(code, 16))
    expect(visible(`a${character}b`)).toBe(`a⟨U+${code}⟩b`)
  }
  expect(visible('\u{E0041}')).toBe('⟨U+E0041⟩')
  expect(visible('\ud800')).toBe('⟨U+D800⟩')
})

it('the letters of every language stay as they are', () => {
  for (const text of ['Träger', 'עץ', '木の板', 'संख्या', '😀', '½ × 3″']) expect(visible(text)).toBe(text)
})

it('an excerpt is short and never half a character', () => {
  expect(excerpt('abc', 3)).toBe('abc')
  expect(excerpt('abcd', 3)).toBe('abc…')
  expect(excerpt('ab😀😀', 3)).toBe('ab…')
})

it('quotation marks differ from the inch marks inside them', () => {
  expect(quoted('plank')).toBe('"plank"')
  expect(quoted('5/8"')).toBe('“5/8"”')
})

it('JSON with escapes means the same', () => {
  const value = { a: 'x\u202ey\u0085\u{E0041}\n', b: '😀 é' }
  const text = escapeUnseen(JSON.stringify(value, undefined, 2))
  expect(JSON.parse(text)).toEqual(value)
  expect(text).toMatch(/^[^\u202e\u0085\u{E0041}]*$/u)
})
