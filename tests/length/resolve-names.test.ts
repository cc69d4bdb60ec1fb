import { describe, expect, test } from 'vitest'
import { readSize } from '../../src/length/read-size.ts'
import { type Definition, resolveNames } from '../../src/length/resolve-names.ts'
import { givenLength, value } from './reading.ts'

function table(entries: Readonly<Record<string, string>>): readonly Definition[] {
  return Object.entries(entries).map(([name, text]) => ({ name, size: value(readSize(text)) }))
}

describe('a table of names', () => {
  test('may use its names in any order', () => {
    const { values, faults } = resolveNames(
      table({ under: 'gauge + 2 * board', board: '7/16', gauge: '2 3/16' }),
      'inch',
    )
    expect(faults).toEqual([])
    expect([...values.keys()].sort()).toEqual(['board', 'gauge', 'under'])
    expect(values.get('under')).toEqual({ kind: 'length', mm: 77.7875, basis: 'derived' })
    expect(values.get('board')).toEqual({ kind: 'length', mm: 11.1125, basis: 'given' })
  })

  test('carries scaled, unknown and angles along', () => {
    const { values } = resolveNames(
      table({
        a: '~3',
        b: 'a / 2',
        c: 'unknown',
        d: 'b + c',
        e: 'd * 2',
        tilt: '22 1/2°',
        other: '90 - tilt',
      }),
      'inch',
    )
    expect(values.get('b')).toEqual({ kind: 'length', mm: 38.1, basis: 'scaled' })
    expect(values.get('c')).toEqual({ kind: 'unknown', names: [] })
    expect(values.get('d')).toEqual({ kind: 'unknown', names: ['c'] })
    expect(values.get('e')).toEqual({ kind: 'unknown', names: ['c'] })
    expect(values.get('other')).toEqual({ kind: 'angle', angleDegrees: 67.5, basis: 'derived' })
  })

  test('may use names from outside, and its own come first', () => {
    const outer = new Map([
      ['length', givenLength(100)],
      ['board', givenLength(1)],
    ])
    const { values } = resolveNames(table({ half: 'length / 2 + board', board: '10' }), 'mm', outer)
    expect(values.get('half')).toMatchObject({ mm: 60 })
  })

  test('takes the first of two definitions', () => {
    const twice = [...table({ a: '1' }), ...table({ a: '2' })]
    expect(resolveNames(twice, 'mm').values.get('a')).toMatchObject({ mm: 1 })
  })
})

describe('a fault in a table of names', () => {
  test('is told once, at the name that has it, and what uses the name is faulty', () => {
    const { values, faults } = resolveNames(
      table({ a: 'b + 1', b: 'c / 2', c: 'gaueg * 2', d: '3', gauge: '1' }),
      'inch',
    )
    expect(faults).toMatchObject([
      { name: 'c', fault: { code: 'unknown-name', found: 'gaueg', from: 0, nearest: 'gauge' } },
    ])
    expect(['a', 'b', 'c'].map(name => values.get(name)?.kind)).toEqual(['faulty', 'faulty', 'faulty'])
    expect(values.get('d')).toMatchObject({ mm: 76.2 })
  })

  test('a cycle is named from end to end', () => {
    const { values, faults } = resolveNames(
      table({ a: 'b + 1', b: '2 * c', c: 'a / 2', d: 'a', e: '1' }),
      'inch',
    )
    expect(faults).toEqual([
      {
        name: 'c',
        fault: { code: 'cycle', from: 0, to: 1, found: 'a → b → c → a', wanted: expect.any(String) },
      },
    ])
    expect(['a', 'b', 'c', 'd'].map(name => values.get(name)?.kind)).toEqual(Array(4).fill('faulty'))
    expect(values.get('e')).toMatchObject({ kind: 'length' })
  })

  test('a name that uses itself is a cycle', () => {
    expect(resolveNames(table({ a: 'max(1, a)' }), 'inch').faults).toMatchObject([
      { name: 'a', fault: { code: 'cycle', found: 'a → a', from: 7, to: 8 } },
    ])
  })

  test('two cycles are two faults', () => {
    const { faults } = resolveNames(table({ a: 'b', b: 'a', c: 'd', d: 'c' }), 'inch')
    expect(faults.map(({ fault }) => fault.found)).toEqual(['a → b → a', 'c → d → c'])
  })
})

describe('a long table', () => {
  const many = 20_000

  test('of names each using the next is calculated', () => {
    const chain = Object.fromEntries(Array.from({ length: many }, (_, i) => [`n${i}`, `n${i + 1} + 0`]))
    const { values, faults } = resolveNames(table({ ...chain, [`n${many}`]: '3' }), 'mm')
    expect(faults).toEqual([])
    expect(values.get('n0')).toMatchObject({ mm: 3 })
  })

  test('that closes on itself gives one fault of one line', () => {
    const ring = Object.fromEntries(Array.from({ length: many }, (_, i) => [`n${i}`, `n${(i + 1) % many}`]))
    const { faults } = resolveNames(table(ring), 'mm')
    expect(faults).toHaveLength(1)
    expect(faults[0]?.fault.found).toBe(
      'n0 → n1 → n2 → n3 → n4 → n5 → n6 → n7 → n8 → n9 → n10 → n11 → … → n0',
    )
  })

  test('of mistakes gives the first hundred', () => {
    const wrong = Object.fromEntries(Array.from({ length: many }, (_, i) => [`n${i}`, `m${i}`]))
    const { values, faults } = resolveNames(table(wrong), 'mm')
    expect(faults).toHaveLength(100)
    expect(values.size).toBe(many)
  })
})
