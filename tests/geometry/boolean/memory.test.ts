import { expect, test } from 'vitest'
import { difference, exclusiveOr, intersection, union } from '../../../src/geometry/boolean/boolean.ts'
import {
  beginRun,
  createMemory,
  float64Array,
  int8Array,
  int32Array,
} from '../../../src/geometry/boolean/memory.ts'
import { offsetRegion } from '../../../src/geometry/offset/offset.ts'
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

test('shapes of any size work in the same memory, one kind of work after the other', () => {
  const memory = createMemory()
  for (const teeth of [3, 2_500, 25, 600, 2_500]) {
    const wheel = gear(teeth)
    const moved = transformRegion(wheel, shift(7.3, 3.1))
    expect(union([wheel], [moved], memory)).toEqual(union([wheel], [moved]))
    for (const delta of [1, -1]) {
      expect(offsetRegion(wheel, delta, {}, memory)).toEqual(offsetRegion(wheel, delta))
    }
  }
})

test('it grows to what the largest work took, and from then on all is done in one piece', () => {
  const memory = createMemory()
  const wheel = gear(2_500)
  const teeth = 4 * 2_500
  for (let time = 0; time < 2; time++) offsetRegion(wheel, 1, {}, memory)
  const { piece } = memory
  expect(piece.byteLength).toBeGreaterThan(200 * teeth)
  expect(piece.byteLength).toBeLessThan(500 * teeth)
  for (const small of [gear(25), gear(600), wheel]) {
    offsetRegion(small, -1, {}, memory)
    union([small], [], memory)
    expect(memory.piece).toBe(piece)
  }
})

test('arrays begin with zeros, whatever stood there before, and none lies over another', () => {
  const memory = createMemory()
  const lengths = [1, 3, 200, 5_000, 70_000, 7, 400]
  for (let run = 0; run < 4; run++) {
    beginRun(memory, 1_000)
    const arrays = lengths.flatMap(length => [
      int8Array(memory, length),
      float64Array(memory, length),
      int32Array(memory, length),
    ])
    for (const array of arrays) expect(array.every(value => value === 0)).toBe(true)
    arrays.forEach((array, i) => {
      array.fill(i + 1)
    })
    arrays.forEach((array, i) => {
      expect(array.every(value => value === i + 1)).toBe(true)
    })
  }
})
