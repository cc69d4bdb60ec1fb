/**
 * The kernel beside other libraries: the same outlines, one run, one table.
 *
 *     tsx tools/bench-kernel.ts [--quick]
 *
 * What is measured is the library as it is built (`npm run build`); it works in memory that is kept from call to
 * call. Times are warm medians in milliseconds of processor time, taken in turn. A ratio is the other's time over ours,
 * by the round: above 1 the kernel is faster. clipper2-wasm and clipper2-ts know only polygons and get chords within
 * 0.005 mm; @flatten-js/core keeps arcs as we do, and cannot offset. Nobody's input is made while the clock runs,
 * and what the others give is not made into arcs again. clipper2-wasm stands there twice: with its results left in the
 * memory of WebAssembly, and with them read as points of JavaScript, as all others give theirs.
 *
 * The floor is what our result costs by itself: its new points and edges made once more, and nothing worked out.
 */
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type * as Kernel from '../src/geometry/index.ts'
import type { Region } from '../src/geometry/shape/contour.ts'
import type { Outcome } from '../src/geometry/shape/outcome.ts'
import { inTurn } from './bench/in-turn.ts'
import { loadPeers, type Peer, type Ready } from './bench/kernel-peers.ts'
import { families, segmentsOf } from './bench/kernel-shapes.ts'
import { machine } from './bench/measure.ts'
import { costOfPage } from './bench/new-memory.ts'
import { remaker } from './bench/remake.ts'

const built = new URL('../dist/lib/geometry.js', import.meta.url)
const { createMemory, offsetRegion, shift, transformRegion, union } = (await import(
  built.href
)) as typeof Kernel

/** A call that is expected to take longer than this, in ms, is not made. */
const longest = 6_000

type Operation = {
  readonly name: string
  readonly ours: (set: readonly Region[]) => Ours
  readonly theirs: (peer: Peer, set: readonly Region[]) => Ready | undefined
}

/** An operation on every outline of a set, and what makes the objects of its results alone. */
type Ours = { readonly run: () => void; readonly floor: () => void }

const pairs = (set: readonly Region[]) => set.map(r => [r, transformRegion(r, shift(7.3, 3.1))] as const)

const operations: readonly Operation[] = [
  ...[1, -1].map(
    (delta): Operation => ({
      name: `offset by ${delta}`,
      ours: set => {
        const memory = createMemory()
        return oursOf(
          set.map(region => ({ given: [region], run: () => offsetRegion(region, delta, {}, memory) })),
        )
      },
      theirs: (peer, set) => peer.offset?.(set, delta),
    }),
  ),
  {
    name: 'union with a copy',
    ours: set => {
      const memory = createMemory()
      return oursOf(pairs(set).map(([a, b]) => ({ given: [a, b], run: () => union([a], [b], memory) })))
    },
    theirs: (peer, set) => peer.union(pairs(set)),
  },
]

/** Where a result is made of many new objects, what the system takes for their memory may be most of the time. */
const pageMs = costOfPage()
const quick = process.argv.includes('--quick')
const peers = await loadPeers()
const shapes = families(quick)

console.log(`${machine()}; ${new Date().toISOString().slice(0, 10)}`)
const libraries = [...new Set(peers.map(({ library }) => library))]
console.log(libraries.map(name => `${name} ${versionOf(name)}`).join(', '))
console.log(`The system takes ${(1000 * pageMs).toFixed(2)} µs to hand out a page of memory.`)
console.log('The copy is shifted by (7.3, 3.1). ms of processor time, warm medians; × is theirs over ours.\n')
row([
  'operation',
  'outline',
  'segments',
  'ours ms',
  'floor ms',
  ...peers.flatMap(({ name }) => [`${name} ms`, '×']),
])
row(['---', '---', '---:', '---:', '---:', ...peers.flatMap(() => ['---:', '---:'])])
const growth: string[] = []
for (const operation of operations) {
  for (const { name, sets } of shapes) {
    const ours: { segments: number; ms: number; floorMs: number }[] = []
    const last = new Map<Peer, number[]>()
    for (const set of sets) {
      const ready = peers.map(peer =>
        tooLong(last.get(peer) ?? []) ? undefined : operation.theirs(peer, set),
      )
      const asked = ready.flatMap((r, k) => (r === undefined ? [] : [{ peer: peers[k]!, ready: r }]))
      const taking = asked.filter(({ ready }) => succeeds(ready))
      const { run, floor } = operation.ours(set)
      const [mine, least, ...others] = inTurn([run, floor, ...taking.map(t => t.ready.run)])
      for (const { ready } of asked) ready.dispose?.()
      const cells = new Map(taking.map(({ peer }, k) => [peer, others[k]!]))
      for (const [peer, { ms }] of cells) last.set(peer, [...(last.get(peer) ?? []), ms])
      ours.push({ segments: segmentsOf(set), ms: mine!.ms, floorMs: least!.ms })
      row([
        operation.name,
        name,
        segmentsOf(set).toLocaleString('en'),
        digits(mine!.ms),
        digits(least!.ms),
        ...peers.flatMap(peer => {
          const cell = cells.get(peer)
          if (cell !== undefined) return [digits(cell.ms), digits(cell.ratio)]
          return [asked.some(a => a.peer === peer) ? 'fails' : '–', '–']
        }),
      ])
    }
    const [, small] = ours
    const large = ours.at(-1)!
    if (small !== undefined && large.segments > 10 * small.segments) {
      const exponent = (key: 'ms' | 'floorMs'): string =>
        (Math.log(large[key] / small[key]) / Math.log(large.segments / small.segments)).toFixed(2)
      const share = `${digits(large.floorMs)} of ${digits(large.ms)} ms`
      growth.push(
        `${operation.name}, ${name}: ${exponent('ms')}; that of the floor ${exponent('floorMs')}, ${share} at last`,
      )
    }
  }
}
if (growth.length > 0) {
  console.log('\nGrowth exponents from 1,000 to 100,000 segments:')
  for (const line of growth) console.log(`  ${line}`)
  console.log('\nPeak of memory of a process of its own, a gear of 100,000 segments, one operation:')
  for (const name of ['offset', 'union']) {
    const { before, after } = memoryOf(name)
    console.log(`  ${name}: ${after} MB, of which node and the outlines took ${before} MB`)
  }
}

function oursOf(
  all: readonly { readonly given: readonly Region[]; readonly run: () => Outcome<readonly Region[]> }[],
): Ours {
  const remakers = all.map(({ given, run }) => remaker(done(run()), given))
  return {
    run: () => {
      for (const { run } of all) done(run())
    },
    floor: () => {
      for (const again of remakers) again()
    },
  }
}

function done<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.fault.reason)
  return outcome.value
}

/** Whether a library gets through the operation at all; one of them throws on some outlines. */
function succeeds({ run }: Ready): boolean {
  try {
    run()
    return true
  } catch {
    return false
  }
}

/** Whether the next size, ten times as large, would take too long by how the last ones grew. */
function tooLong(times: readonly number[]): boolean {
  const last = times.at(-1)
  if (last === undefined) return false
  const before = times.at(-2) ?? last / 20
  return (last * last) / before > longest
}

function digits(value: number): string {
  return value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(value < 1 ? 3 : 2)
}

function row(cells: readonly string[]): void {
  console.log(`| ${cells.join(' | ')} |`)
}

function versionOf(name: string): string {
  const about = new URL(`../node_modules/${name}/package.json`, import.meta.url)
  return (JSON.parse(readFileSync(about, 'utf8')) as { version: string }).version
}

function memoryOf(operation: string): { before: number; after: number } {
  const tool = fileURLToPath(new URL('bench/kernel-memory.ts', import.meta.url))
  const out = execFileSync(process.execPath, ['--import', 'tsx', tool, operation], { encoding: 'utf8' })
  return JSON.parse(out) as { before: number; after: number }
}
