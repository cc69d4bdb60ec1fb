/**
 * Measures offsets against two polygon libraries on the same outlines and prints a table: warm medians in
 * milliseconds, and how many times as long the others take. The libraries get chords within 0.005 mm; the one in
 * WebAssembly gets them laid out in its own memory beforehand and keeps its result there, which is the best it
 * can do. `tsx tools/bench-offset.ts`; run with `--expose-gc` to see the memory.
 */
import { createRequire } from 'node:module'
import { cpus } from 'node:os'
import { EndType as EndTypeTs, inflatePathsD, JoinType as JoinTypeTs } from 'clipper2-ts'
import type { MainModule } from 'clipper2-wasm/dist/clipper2z.js'
import { chordContour } from '../src/geometry/approximate/chords.ts'
import { offsetRegion } from '../src/geometry/offset/offset.ts'
import type { Region } from '../src/geometry/shape/contour.ts'
import { printable } from '../src/number/tolerance.ts'
import { comb } from '../tests/geometry/generate/comb.ts'
import { gear } from '../tests/geometry/generate/gear.ts'
import { randomFrom } from '../tests/geometry/generate/random.ts'
import { randomStar } from '../tests/geometry/generate/star.ts'

const require = createRequire(import.meta.url)
const loadClipper = require('clipper2-wasm') as () => Promise<MainModule>

const sizes = [100, 1_000, 10_000, 100_000]
const deltas = [1, -1]
const seed = 1
const shapes: readonly [string, (segments: number) => Region][] = [
  ['gear', n => gear(n / 4)],
  ['comb', n => comb(n / 4)],
  ['random star', n => randomStar(n, randomFrom(seed))],
]
/** Whole micrometres and a tenth more: finer than the chords by far. */
const decimals = 4

/**
 * Milliseconds of one call: the median of as many as fit the time, at least nine, after as many to warm up. A
 * call that takes longer than all that time is measured once.
 */
function median(run: () => void, budget = 600): number {
  const begin = performance.now()
  const spent = (): number => performance.now() - begin
  run()
  if (spent() > budget) return spent()
  for (let k = 1; k < 5 || spent() < budget / 2; k++) run()
  const times: number[] = []
  while (times.length < 9 || spent() < budget) {
    const start = performance.now()
    run()
    times.push(performance.now() - start)
  }
  times.sort((a, b) => a - b)
  return times[Math.floor(times.length / 2)]!
}

function chords(region: Region): { x: number; y: number }[] {
  return chordContour(region.outer, printable).segments.map(s => ({ x: s.from.x, y: s.from.y }))
}

async function main(): Promise<void> {
  const clipper = await loadClipper()
  const { version } = require('clipper2-ts/package.json') as { version: string }
  console.log(`${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}, clipper2-ts ${version}`)
  console.log(`clipper2-wasm ${(require('clipper2-wasm/package.json') as { version: string }).version}\n`)
  console.log('| outline | segments | offset | ours ms | clipper2-wasm ms | ratio | clipper2-ts ms | ratio |')
  console.log('| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |')
  for (const [name, make] of shapes) {
    const ours = new Map<string, number>()
    for (const size of sizes) {
      const region = make(size)
      const points = chords(region)
      const flat = points.flatMap(p => [p.x, p.y])
      const paths = new clipper.PathsD()
      const path = clipper.MakePathD(flat)
      paths.push_back(path)
      for (const delta of deltas) {
        const mine = median(() => {
          if (!offsetRegion(region, delta).ok) throw new Error(`${name} ${size} by ${delta} has no offset`)
        })
        const wasm = median(() =>
          clipper
            .InflatePathsD(
              paths,
              delta,
              clipper.JoinType.Round,
              clipper.EndType.Polygon,
              2,
              decimals,
              printable,
            )
            .delete(),
        )
        const ts = median(() => {
          inflatePathsD([points], delta, JoinTypeTs.Round, EndTypeTs.Polygon, 2, decimals, printable)
        })
        ours.set(`${size} ${delta}`, mine)
        const cells = [name, size, delta, mine.toFixed(3), wasm.toFixed(3), (wasm / mine).toFixed(2)]
        console.log(`| ${[...cells, ts.toFixed(3), (ts / mine).toFixed(2)].join(' | ')} |`)
      }
      path.delete()
      paths.delete()
    }
    for (const delta of deltas) {
      const small = ours.get(`1000 ${delta}`)!
      const exponent = Math.log(ours.get(`100000 ${delta}`)! / small) / Math.log(100)
      console.log(
        `${name} by ${delta}: growth exponent from 1,000 to 100,000 segments ${exponent.toFixed(2)}`,
      )
    }
  }
  reportMemory()
}

/** How much the heap and its buffers grow over one offset of 100,000 segments, the result kept. */
function reportMemory(): void {
  const region = gear(25_000)
  globalThis.gc?.()
  const before = process.memoryUsage()
  const outcome = offsetRegion(region, 1)
  const after = process.memoryUsage()
  const grown = (after.heapUsed - before.heapUsed + after.arrayBuffers - before.arrayBuffers) / 2 ** 20
  const segments = outcome.ok ? outcome.value[0]!.outer.segments.length : 0
  console.log(
    `100,000 segments: ${grown.toFixed(0)} MB for one offset to ${segments} segments; ` +
      `the whole process holds ${(after.rss / 2 ** 20).toFixed(0)} MB`,
  )
}

await main()
