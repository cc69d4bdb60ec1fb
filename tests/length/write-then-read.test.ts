import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { LengthStyle } from '../../src/length/precision.ts'
import { lengthText } from '../../src/length/show-length.ts'
import { toMillimetres } from '../../src/length/unit.ts'
import { calculated, mm, value } from './reading.ts'

const sixtyFourths: LengthStyle = { unit: 'inch', precision: toMillimetres(1 / 64, 'inch') }
const tenths: LengthStyle = { unit: 'mm', precision: 0.1 }

test('a length in 64ths, written with or without feet and marks, reads as the same number', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -64_000, max: 64_000 }),
      fc.boolean(),
      fc.boolean(),
      (n, feet, unitMark) => {
        const length = toMillimetres(n / 64, 'inch')
        expect(mm(lengthText(length, sixtyFourths, { feet, unitMark }))).toBe(length)
      },
    ),
  )
})

test('a length in tenths of a millimetre, written, reads as the same number', () => {
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 100_000 }), fc.boolean(), (n, unitMark) => {
      expect(mm(lengthText(n / 10, tenths, { unitMark }), 'mm')).toBe(n / 10)
    }),
  )
})

test('a scaled length, written, reads as scaled', () => {
  const text = lengthText(63.5, sixtyFourths, { basis: 'scaled' })
  expect(value(calculated(text))).toEqual({ kind: 'length', mm: 63.5, basis: 'scaled' })
})

test('any length is shown within 0.02 mm, by its fraction or by the decimal beside it', () => {
  const styles = [sixtyFourths, tenths, { unit: 'mm', precision: 1 }] as const
  const length = fc.double({ min: -1e5, max: 1e5, noNaN: true })
  fc.assert(
    fc.property(length, fc.constantFrom(...styles), (length, style) => {
      const text = lengthText(length, style)
      const exact = /^≈ .* \((.*)\)$/.exec(text)?.[1] ?? text
      expect(Math.abs(mm(exact, style.unit) - length)).toBeLessThanOrEqual(0.0200001)
    }),
  )
})
