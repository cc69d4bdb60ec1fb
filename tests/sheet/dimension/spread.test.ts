import fc from 'fast-check'
import { expect, test } from 'vitest'
import { spread } from '../../../src/sheet/dimension/spread.ts'

const things = fc
  .array(
    fc.record({
      wanted: fc.double({ min: -100, max: 100, noNaN: true }),
      size: fc.double({ min: 0.5, max: 20, noNaN: true }),
    }),
    {
      minLength: 1,
      maxLength: 40,
    },
  )
  .map(list => list.sort((a, b) => a.wanted - b.wanted))

const sumOfSquares = (places: readonly number[], wanted: readonly number[]) =>
  places.reduce((sum, place, i) => sum + (place - wanted[i]!) ** 2, 0)

test('things with room enough stay where they want to stand', () => {
  expect(spread([0, 10, 25], [4, 6, 5])).toEqual([0, 10, 25])
})

/** By definition: two that want the same place stand half of both aside. */
test('two that want one place give way alike', () => {
  expect(spread([7, 7], [4, 4])).toEqual([5, 9])
})

test('nothing overlaps, and all keep their order', () => {
  fc.assert(
    fc.property(things, list => {
      const places = spread(
        list.map(t => t.wanted),
        list.map(t => t.size),
      )
      for (let i = 1; i < list.length; i++) {
        const room = (list[i - 1]!.size + list[i]!.size) / 2
        expect(places[i]! - places[i - 1]!).toBeGreaterThanOrEqual(room - 1e-9)
      }
    }),
  )
})

test('no other way to stand free moves them less: none a small step away does', () => {
  fc.assert(
    fc.property(
      things,
      fc.nat(),
      fc.nat(),
      fc.double({ min: -1, max: 1, noNaN: true }),
      (list, a, b, step) => {
        const wanted = list.map(t => t.wanted)
        const sizes = list.map(t => t.size)
        const places = spread(wanted, sizes)
        // any stretch of neighbours moved together, as far as the others let it
        const [from, to] = [a % list.length, b % list.length].sort((x, y) => x - y) as [number, number]
        const moved = places.map((place, i) => (i >= from && i <= to ? place + step : place))
        const free = moved.every(
          (place, i) => i === 0 || place - moved[i - 1]! >= (sizes[i - 1]! + sizes[i]!) / 2 - 1e-9,
        )
        if (free)
          expect(sumOfSquares(moved, wanted)).toBeGreaterThanOrEqual(sumOfSquares(places, wanted) - 1e-6)
      },
    ),
    { numRuns: 1000 },
  )
})
