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
import { machine, median } from './bench/measure.ts'

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

function time(run: () => void): number {
  const start = performance.now()
  run()
  return performance.now() - start
}

function measure({ stops, pairs, origin }: Case) {
  const placing: number[] = []
  const floor: number[] = []
  let left = 0
  for (let round = 0; round <= rounds; round++) {
    const least = time(() => {
      const sorted = [...stops].sort((a, b) => a.at - b.at)
      const texts = sorted.map(({ words }) => dimensionText(words, edge, false, fonts))
      for (const { words } of pairs) dimensionText(words, edge, false, fonts)
      for (const [i, text] of texts.entries()) text.put(sorted[i]!.at, 10)
    })
    const placed = time(() => {
      const { dropped } = layBeside({ origin, stops }, pairs, edge, 5, fonts)
      left = dropped.stops.length + dropped.between.length
    })
    // the first round warms up
    if (round > 0) {
      floor.push(least)
      placing.push(placed)
    }
  }
  return { placing: median(placing), floor: median(floor), left }
}

console.log(`${machine()}\n`)
console.log('| dimensions stand | dimensions | found no room | ms | µs each | floor ms | ratio |')
console.log('| --- | ---: | ---: | ---: | ---: | ---: | ---: |')
for (const [name, spacing] of layouts) {
  const times = counts.map(count => {
    const { placing, floor, left } = measure(scattered(count, spacing, name === 'in clusters'))
    const each = ((placing * 1000) / count).toFixed(0)
    const ratio = (placing / floor).toFixed(1)
    console.log(
      `| ${name} | ${count} | ${left} | ${placing.toFixed(2)} | ${each} | ${floor.toFixed(2)} | ${ratio} |`,
    )
    return placing
  })
  // the first size warms the program up and says little
  const exponent = Math.log(times.at(-1)! / times[1]!) / Math.log(counts.at(-1)! / counts[1]!)
  console.log(
    `${name}: growth exponent from ${counts[1]} to ${counts.at(-1)} dimensions ${exponent.toFixed(2)}`,
  )
}

// spreading alone, where all want one place and every step back is taken
const worst = counts.map(count => {
  const wanted = Array.from({ length: 50 * count }, () => 0)
  const sizes = wanted.map((_, i) => 1 + (i % 7))
  return median(Array.from({ length: rounds }, () => time(() => spread(wanted, sizes))))
})
const grows = Math.log(worst.at(-1)! / worst[1]!) / Math.log(counts.at(-1)! / counts[1]!)
console.log(`all at one place: growth exponent of spreading ${grows.toFixed(2)}`)
