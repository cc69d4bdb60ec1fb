import fc from 'fast-check'
import { expect, test } from 'vitest'
import { areNear, type Box3 } from '../../../src/geometry/solid/box3.ts'
import { nearAmong, nearBetween } from '../../../src/geometry/solid/near-boxes.ts'

const place = fc.integer({ min: 0, max: 40 })
const size = fc.integer({ min: 0, max: 8 })
const anyBox: fc.Arbitrary<Box3> = fc
  .tuple(place, place, place, size, size, size)
  .map(([x, y, z, a, b, c]) => ({ low: { x, y, z }, high: { x: x + a, y: y + b, z: z + c } }))

test('the near pairs of a list are those that comparing each with each gives, in the same order', () => {
  fc.assert(
    fc.property(fc.array(anyBox, { maxLength: 40 }), fc.integer({ min: 0, max: 5 }), (boxes, reach) => {
      const all = boxes.flatMap((a, i) =>
        boxes.flatMap((b, j) => (i < j && areNear(a, b, reach) ? [[i, j]] : [])),
      )
      expect(nearAmong(boxes, reach)).toEqual(all)
    }),
  )
})

test('the near pairs of two lists are those that comparing each with each gives, in the same order', () => {
  const list = fc.array(anyBox, { maxLength: 30 })
  fc.assert(
    fc.property(list, list, fc.integer({ min: 0, max: 5 }), (first, second, reach) => {
      const all = first.flatMap((a, i) => second.flatMap((b, j) => (areNear(a, b, reach) ? [[i, j]] : [])))
      expect(nearBetween(first, second, reach)).toEqual(all)
    }),
  )
})
