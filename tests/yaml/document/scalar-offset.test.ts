import fc from 'fast-check'
import { expect, it } from 'vitest'
import { parseDocument, type Scalar } from 'yaml'
import { offsetInRaw } from '../../../src/yaml/document/scalar-offset.ts'

it('every letter of a quoted text is found where it stands', () => {
  const piece = fc.constantFrom('a', '1', ' ', '/', "''", 'é', '😀')
  fc.assert(
    fc.property(fc.array(piece, { minLength: 1 }), pieces => {
      const raw = `'${pieces.join('')}'`
      const { value } = parseDocument(raw).contents as Scalar<string>
      let at = 1
      let index = 0
      for (const written of pieces) {
        expect(offsetInRaw(raw, index)).toBe(at)
        at += written.length
        index += written === "''" ? 1 : written.length
      }
      expect(index).toBe(value.length)
    }),
  )
})

it('also behind escapes', () => {
  const pieces = ['a', '\\"', '\\\\', '\\n', '\\x41', '\\u00e9', '\\U0001F600', '\\/', '\\_', '1']
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...pieces), { minLength: 1 }), chosen => {
      const raw = `"${chosen.join('')}"`
      const { value } = parseDocument(raw).contents as Scalar<string>
      let at = 1
      let index = 0
      for (const written of chosen) {
        expect(offsetInRaw(raw, index)).toBe(at)
        at += written.length
        index += written.startsWith('\\U') ? 2 : 1
      }
      expect(index).toBe(value.length)
    }),
  )
})

it('a text of several lines is found at its beginning', () => {
  expect(offsetInRaw('"a\n b"', 2)).toBe(0)
})
