import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate, evaluateAngle } from '../../src/length/evaluate.ts'
import type { LengthFault, Read } from '../../src/length/fault.ts'
import { readAngle } from '../../src/length/read-angle.ts'
import { readDimensions } from '../../src/length/read-dimensions.ts'
import { readName } from '../../src/length/read-name.ts'
import { readSize } from '../../src/length/read-size.ts'
import { resolveNames } from '../../src/length/resolve-names.ts'
import { givenLength } from './reading.ts'

const scope = new Map([['gauge', givenLength(55.5625)]])

/** A fault points into the text and quotes it; anything else would show that it was not one of ours. */
function expectInside(fault: LengthFault, text: string): void {
  expect(fault.from).toBeGreaterThanOrEqual(0)
  expect(fault.to).toBeGreaterThanOrEqual(fault.from)
  expect(fault.to).toBeLessThanOrEqual(text.length)
  const quoted = text.slice(fault.from, fault.to)
  expect(
    fault.found.endsWith('…') ? quoted.startsWith(fault.found.slice(0, -1)) : quoted === fault.found,
  ).toBe(true)
  expect(fault.wanted).not.toBe('')
}

function tryEverything(text: string): void {
  const check = (read: Read<unknown>) => {
    if (!read.ok) expectInside(read.fault, text)
  }
  check(readDimensions(text))
  check(readAngle(text))
  check(readName(text))
  const size = readSize(text)
  check(size)
  if (!size.ok) return
  expect(size.value.written).toBe(text)
  check(evaluate(size.value, scope, 'inch'))
  check(evaluateAngle(size.value, scope, 'mm'))
  resolveNames([{ name: 'a', size: size.value }], 'mm', scope)
}

const fragments =
  "0 1 2 3 64 1000000 . , / // 1/2 2 1/2 1-3/16 ½ ⅜ + - * × ÷ − – ( ) (( )) ~ \" ' '' ″ ′ ° mm cm in ft deg x × X unknown gauge gaueg min( max( sqrt( sin( tan( round( 1/0 # \u0000 \u202e \ud83d 😀 <b> & \n \t".split(
    ' ',
  )

describe('no text makes the reader throw, hang, or point outside the text', () => {
  test('pieces of sizes in any order', () => {
    const text = fc
      .array(fc.constantFrom(...fragments, ' '), { maxLength: 24 })
      .map(pieces => pieces.join(''))
    fc.assert(fc.property(text, tryEverything), { numRuns: 10_000 })
  })

  test('pieces of sizes with spaces between', () => {
    const text = fc.array(fc.constantFrom(...fragments), { maxLength: 12 }).map(pieces => pieces.join(' '))
    fc.assert(fc.property(text, tryEverything), { numRuns: 10_000 })
  })

  test('any letters at all, whole or broken', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 60 }), tryEverything), { numRuns: 5000 })
    const units = fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 40 })
    fc.assert(
      fc.property(units, codes => tryEverything(String.fromCharCode(...codes))),
      { numRuns: 5000 },
    )
  })

  test.each([
    '('.repeat(1000),
    '-'.repeat(1000),
    'min('.repeat(250),
    '1'.repeat(1000),
    '1 '.repeat(500),
    '1/'.repeat(500),
    ' '.repeat(1000),
    '1+'.repeat(499),
    `1${'+1'.repeat(499)}`,
    '1e999',
    `0.${'0'.repeat(900)}1`,
    `1/${'9'.repeat(900)}`,
    `${'9'.repeat(300)}/${'9'.repeat(300)}`,
    `1${'*999999'.repeat(140)}`,
    '1 x '.repeat(700),
    '('.repeat(50_000_000),
    'x '.repeat(25_000_000),
  ])('a long one', text => {
    tryEverything(text)
  })
})
