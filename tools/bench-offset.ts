/**
 * Measures offsets against two polygon libraries on the same outlines and prints a table: warm medians in
 * milliseconds, and how many times as long the others take. The libraries get chords within 0.005 mm; the one in
 * WebAssembly gets them laid out in its own memory beforehand and keeps its result there, which is the best it
 * can do. `tsx tools/bench-offset.ts`; run with `--expose-gc` to see the memory.
 */
import { readFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { EndType as EndTypeTs, inflatePathsD, JoinType as JoinTypeTs } from 'clipper2-ts'
import { chordPoints } from '../src/geometry/approximate/chords.ts'
import { offsetRegion } from '../src/geometry/offset/offset.ts'
import type { Region } from '../src/geometry/shape/contour.ts'
import { printable } from '../src/number/tolerance.ts'
import { loadClipper } from '../tests/geometry/boolean/clipper.ts'
import { comb } from '../tests/geometry/generate/comb.ts'
import { gear } from '../tests/geometry/generate/gear.ts'
import { randomFrom } from '../tests/geometry/generate/random.ts'
import { randomStar } from '../tests/geometry/generate/star.ts'

const quick = process.argv.includes('--quick')
const sizes = quick ? [100, 1_000] : [100, 1_000, 10_000, 100_000]
const deltas = [1, -1]
const seed = 1
const shapes: readonly [string, (segments: number) => Region][] = [
  ['gear', n => gear(n / 4)],
  ['comb', n => comb(n / 4)],
  ['random star', n => randomStar(n, randomFrom(seed))],
]
/** Decimals that the libraries round coordinates to: finer than the chords by far. */
const decimals = 4
/** A call that is expected to take longer than this, in ms, is not made. */
const longest = 12_000

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

/** Times of one candidate at growing sizes; it drops out once the next size would take too long. */
function candidate(): (run: () => void) => number | undefined {
  const times: number[] = []
  let out = false
  return run => {
    const last = times[times.length - 1]
    const before = times[times.length - 2]
    if (last !== undefined && before !== undefined && (last * last) / before > longest) out = true
    if (out) return undefined
    const time = median(run)
    times.push(time)
    return time
  }
}

const clipper = await loadClipper()
const { module } = clipper
const { InflatePathsD, JoinType, EndType } = module
const version = (name: string): string =>
  (JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8')) as { version: string }).version

console.log(
  `${cpus()[0]?.model.trim() ?? 'unknown processor'}, Node ${process.version}, ` +
    `clipper2-wasm ${version('clipper2-wasm')}, clipper2-ts ${version('clipper2-ts')}\n`,
)
console.log('| outline | segments | offset | ours ms | clipper2-wasm ms | ratio | clipper2-ts ms | ratio |')
console.log('| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |')
for (const [name, make] of shapes) {
  for (const delta of deltas) {
    const wasm = candidate()
    const ts = candidate()
    const ours: number[] = []
    for (const size of sizes) {
      const region = make(size)
      const paths = clipper.paths([region], printable)
      const points = [...chordPoints(region.outer, printable)]
      const mine = median(() => {
        if (!offsetRegion(region, delta).ok) throw new Error(`${name} ${size} by ${delta} has no offset`)
      })
      ours.push(mine)
      const others = [
        wasm(() =>
          InflatePathsD(paths, delta, JoinType.Round, EndType.Polygon, 2, decimals, printable).delete(),
        ),
        ts(() => {
          inflatePathsD([points], delta, JoinTypeTs.Round, EndTypeTs.Polygon, 2, decimals, printable)
        }),
      ]
      paths.delete()
      const cells = others.map(t =>
        t === undefined ? '– | –' : `${t.toFixed(3)} | ${(t / mine).toFixed(2)}`,
      )
      console.log(`| ${[name, size, delta, mine.toFixed(3), ...cells].join(' | ')} |`)
    }
    const [, small, , large] = ours
    if (small !== undefined && large !== undefined) {
      const exponent = Math.log(large / small) / Math.log(100)
      console.log(
        `${name} by ${delta}: growth exponent from 1,000 to 100,000 segments ${exponent.toFixed(2)}`,
      )
    }
  }
}
if (!quick) reportMemory()

/** How much the heap and its buffers grow over one offset of 100,000 segments, the result kept. */
function reportMemory(): void {
  const region = gear(25_000)
  globalThis.gc?.()
  const before = process.memoryUsage()
  const outcome = offsetRegion(region, 1)
  const after = process.memoryUsage()
  const grown = (after.heapUsed - before.heapUsed + after.arrayBuffers - before.arrayBuffers) / 1e6
  const segments = outcome.ok ? outcome.value[0]!.outer.segments.length : 0
  console.log(
    `100,000 segments: ${grown.toFixed(0)} MB for one offset, garbage included, to ${segments} segments; ` +
      `the whole process, the libraries' memory with it, holds ${(after.rss / 1e6).toFixed(0)} MB`,
  )
}
