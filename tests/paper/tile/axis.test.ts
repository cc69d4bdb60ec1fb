import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cutAxis, shownFrom, shownTo } from '../../../src/paper/tile/axis.ts'
import { harmsOf, type Spared } from '../../../src/paper/tile/harm.ts'

const axis = { from: 0, to: 500, reach: 190, overlap: 10 }
const full = { count: () => 1, most: 1 }

const spared = fc.array(
  fc
    .tuple(fc.double({ min: 5, max: 480, noNaN: true }), fc.double({ min: 1, max: 60, noNaN: true }))
    .map(([low, length]): Spared => ({ low, high: low + length, harm: 1 })),
  { maxLength: 12 },
)

/** The harms of the stretches that a place lies within, one after the other. */
function plainHarm(at: number, spared: readonly Spared[]): number {
  return spared.reduce((sum, { low, high, harm }) => (at > low && at < high ? sum + harm : sum), 0)
}

/** Every way to cut the axis into `count` tiles with seams on a grid of 1 mm, by plain search. */
function leastHarm(count: number, spared: readonly Spared[]): number {
  const { from, to, reach, overlap } = axis
  const harmAt = (at: number): number => plainHarm(at, spared)
  let best = Infinity
  const search = (at: number, left: number, harm: number): void => {
    if (harm >= best) return
    const longest = reach - (at > from ? overlap / 2 : 0)
    if (left === 1) {
      if (to - at <= longest) best = harm
      return
    }
    for (let next = at + 1; next - at <= longest - overlap / 2 && next < to; next++)
      search(next, left - 1, harm + harmAt(next))
  }
  search(from, count, 0)
  return best
}

test('what a seam costs is what the stretches come to that it lies within, their ends left out', () => {
  fc.assert(
    fc.property(spared, fc.double({ min: 0, max: 550, noNaN: true }), (list, at) => {
      const harmAt = harmsOf(list)
      for (const place of [at, ...list.flatMap(({ low, high }) => [low, high])])
        expect(harmAt(place)).toBe(plainHarm(place, list))
    }),
  )
})

test('seams spare everything where any position does, and else do as little harm as a search of every millimetre finds', () => {
  fc.assert(
    fc.property(spared, list => {
      const { stops, harm } = cutAxis(axis, list, full)
      expect(stops.length - 1).toBe(3)
      expect(stops.slice(1, -1).reduce((sum, at) => sum + plainHarm(at, list), 0)).toBe(harm)
      expect(harm).toBeLessThanOrEqual(leastHarm(3, list))
    }),
    { numRuns: 100 },
  )
})

test('the fewest tiles that reach over the axis are taken, each within its reach', () => {
  fc.assert(
    fc.property(fc.double({ min: 10, max: 3000, noNaN: true }), to => {
      const { stops } = cutAxis({ ...axis, to }, [], full)
      const fewest = to <= 190 ? 1 : Math.ceil((to - 10) / 180 - 1e-9)
      expect(stops.length - 1).toBe(fewest)
      stops.slice(1).forEach((stop, i) => {
        const whole = { ...axis, to }
        expect(shownTo(stop, whole) - shownFrom(stops[i]!, whole)).toBeLessThanOrEqual(190 + 1e-6)
      })
    }),
  )
})

test('with nothing to spare the tiles are alike', () => {
  const { stops } = cutAxis(axis, [], full)
  const lengths = stops.slice(1).map((stop, i) => stop - stops[i]!)
  expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThan(1e-6)
})

test('tiles that show nothing cost nothing', () => {
  const islands = [
    [0, 40],
    [460, 500],
  ] as const
  const { pages } = cutAxis(axis, [], {
    count: (from, to) => (islands.some(([low, high]) => low <= to && high >= from) ? 1 : 0),
    most: 1,
  })
  expect(pages).toBe(2)
})
