/**
 * Measures the placing of dimensions by itself, warm: running dimensions beside an edge that grows with their number so
 * that they stand equally near each other, with a distance between every second pair. Prints a table with the exponent by
 * which time grows. `tsx tools/bench-dimensions.ts`. The floor is the least that any way of placing has to do: to sort the
 * places that are wanted and to set the lettering of each once.
 */
import { showLength } from '../src/length/show-length.ts'
import { dimensionText } from '../src/sheet/dimension/dimension-text.ts'
import type { Edge } from '../src/sheet/dimension/edge.ts'
import { layBeside } from '../src/sheet/dimension/lay-beside.ts'
import type { Between, Stop } from '../src/sheet/dimension/run.ts'
import { spread } from '../src/sheet/dimension/spread.ts'
import { randomFrom } from '../tests/geometry/generate/random.ts'
import { bundledFonts } from '../tests/text/bundled-font.ts'
import { exponent, median } from './bench/measure.ts'
import { type Placed, placedInRounds, placingTable, time } from './bench/placing.ts'

const quick = process.argv.includes('--quick')
const counts = quick ? [100, 400, 1600] : [100, 400, 1600, 6400]
const rounds = quick ? 5 : 9
const seed = 1
const fonts = bundledFonts()
const edge: Edge = { side: 'bottom', at: 0 }
const style = { unit: 'inch', precision: 25.4 / 64 } as const

/** From one dimension to the next, in millimetres. */
const layouts = [
  ['far apart', 24],
  ['near', 8.5],
  ['in clusters', 8.5],
  ['too dense', 2],
] as const

type Case = { readonly stops: readonly Stop[]; readonly pairs: readonly Between[]; readonly origin: number }

function scattered(count: number, spacing: number, clustered: boolean): Case {
  const random = randomFrom(seed)
  const show = (mm: number) => showLength(mm, style, { unitMark: false })
  const ats = Array.from({ length: count }, (_, i) => {
    const at = clustered ? Math.floor(i / 5) * 5 * spacing + (i % 5) * 1.5 : i * spacing
    return at + random() * spacing * 0.2 + 1
  })
  const stops = ats.map((at): Stop => ({ at, from: -5, words: show(at), rank: 1 }))
  const pairs = ats.slice(1).flatMap((to, i): Between[] => {
    const from = ats[i]!
    return i % 2 === 0 ? [{ from, to, words: show(to - from), says: '' }] : []
  })
  const zero: Stop = { at: 0, from: 1, words: ['0'], rank: 0 }
  return { stops: [...stops, zero].sort(() => random() - 0.5), pairs, origin: 0 }
}

function measure({ stops, pairs, origin }: Case): Placed {
  return placedInRounds(rounds, () => {
    const floor = time(() => {
      const sorted = [...stops].sort((a, b) => a.at - b.at)
      const texts = sorted.map(({ words }) => dimensionText(words, edge, false, fonts))
      for (const { words } of pairs) dimensionText(words, edge, false, fonts)
      for (const [i, text] of texts.entries()) text.put(sorted[i]!.at, 10)
    })
    let left = 0
    const placing = time(() => {
      const { dropped } = layBeside({ origin, stops }, pairs, edge, 5, 'all that are read', fonts)
      left = dropped.stops.length + dropped.between.length
    })
    return { placing, floor, left }
  })
}

placingTable('dimensions', layouts, counts, (count, spacing, layout) =>
  measure(scattered(count, spacing, layout === 'in clusters')),
)

// spreading alone, where all want one place and every step back is taken
const worst = counts.map(count => {
  const wanted = Array.from({ length: 50 * count }, () => 0)
  const sizes = wanted.map((_, i) => 1 + (i % 7))
  return median(Array.from({ length: rounds }, () => time(() => spread(wanted, sizes))))
})
const at = (i: number) => ({ size: counts.at(i)!, value: worst.at(i)! })
console.log(`all at one place: growth exponent of spreading ${exponent(at(1), at(-1)).toFixed(2)}`)
