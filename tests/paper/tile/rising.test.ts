import fc from 'fast-check'
import { expect, test } from 'vitest'
import { risingCounts } from '../../../src/paper/tile/rising.ts'

const ascending = fc.array(fc.integer({ min: 0, max: 5 }), { maxLength: 60 }).map(list => list.sort())

test('counts that never fall are those that each entry has by itself', () => {
  fc.assert(
    fc.property(ascending, fc.integer({ min: 0, max: 3 }), (list, more) => {
      expect(risingCounts(list, count => count, Math.max(0, ...list) + more)).toEqual(list)
    }),
  )
})

test('of a long list with few counts few entries are counted', () => {
  const list = Array.from({ length: 1024 }, (_, i) => (i < 700 ? 1 : 2))
  let counted = 0
  const counts = risingCounts(
    list,
    count => {
      counted++
      return count
    },
    3,
  )
  expect(counts).toEqual(list)
  expect(counted).toBeLessThanOrEqual(12)
})
