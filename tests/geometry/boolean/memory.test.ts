import { expect, test } from 'vitest'
import { difference, exclusiveOr, intersection, union } from '../../../src/geometry/boolean/boolean.ts'
import { createMemory } from '../../../src/geometry/boolean/memory.ts'
import { shift } from '../../../src/geometry/shape/matrix.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { gear } from '../generate/gear.ts'
import { randomCase } from './random-cases.ts'

const operations = { union, difference, intersection, exclusiveOr }

test('booleans in kept memory give what they give in new memory, whatever worked in it before', () => {
  const memory = createMemory()
  for (let number = 0; number < 300; number++) {
    const { first, second } = randomCase(number)
    for (const [name, operation] of Object.entries(operations)) {
      const kept = operation(first, second, memory)
      expect(kept, `${name} of case ${number}`).toEqual(operation(first, second))
    }
  }
})

test('a result stays as it is when its memory is used again', () => {
  const memory = createMemory()
  const wheel = gear(25)
  const moved = transformRegion(wheel, shift(7.3, 3.1))
  const found = union([wheel], [moved], memory)
  const before = structuredClone(found)
  difference([moved], [gear(400)], memory)
  expect(found).toEqual(before)
})

test('shapes of any size work in the same memory: it holds half a megabyte at most', () => {
  const memory = createMemory()
  for (const teeth of [3, 2_500, 25, 600]) {
    const wheel = gear(teeth)
    const moved = transformRegion(wheel, shift(7.3, 3.1))
    expect(union([wheel], [moved], memory)).toEqual(union([wheel], [moved]))
    expect(memory.piece.byteLength).toBeLessThanOrEqual(1 << 19)
  }
})
