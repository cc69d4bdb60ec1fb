import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { cpus, totalmem } from 'node:os'
import { fileURLToPath } from 'node:url'

const usageHook = fileURLToPath(new URL('usage.cjs', import.meta.url))

/** A whole process: from the start of node to its end, in milliseconds, and its peak of memory in bytes. */
export type Measured = {
  readonly wall: number
  readonly cpu: number
  readonly memory: number
  readonly out: string
}

export function measureProcess(words: readonly string[], folder: string): Measured {
  const usageFile = `${folder}/usage.json`
  const start = performance.now()
  const done = spawnSync(process.execPath, ['--require', usageHook, ...words], {
    env: { ...process.env, BENCH_USAGE: usageFile },
    encoding: 'utf8',
  })
  const wall = performance.now() - start
  if (done.status !== 0)
    throw new Error(`node ${words.join(' ')} ended with ${done.status}: ${done.stderr.slice(-400)}`)
  const usage = JSON.parse(readFileSync(usageFile, 'utf8')) as { memory: number; cpu: number }
  return { wall, ...usage, out: done.stdout }
}

/**
 * Measures several things in turn, over and over, so that what else the machine does falls on all of them alike.
 * The first round warms the disk and is thrown away.
 */
export function measureInTurn<K extends string>(
  rounds: number,
  things: Readonly<Record<K, () => Measured>>,
): Record<K, readonly Measured[]> {
  const names = Object.keys(things) as K[]
  const measured = Object.fromEntries(names.map(name => [name, []])) as unknown as Record<K, Measured[]>
  for (let round = 0; round <= rounds; round++) {
    for (const name of names) {
      const one = things[name]()
      if (round > 0) measured[name].push(one)
    }
  }
  return measured
}

/** The medians of every thing that was measured, one row each. */
export function medianTable<K extends string>(
  measured: Readonly<Record<K, readonly Measured[]>>,
  names = Object.keys(measured) as K[],
): Readonly<Record<string, Readonly<Record<string, string>>>> {
  const of = (name: K, key: 'wall' | 'cpu' | 'memory') => median(measured[name].map(one => one[key]))
  return Object.fromEntries(
    names.map(name => [
      name,
      {
        'wall ms': of(name, 'wall').toFixed(0),
        'cpu ms': of(name, 'cpu').toFixed(0),
        'peak MB': (of(name, 'memory') / 2 ** 20).toFixed(0),
      },
    ]),
  )
}

/** By which power of its size something grows. */
export function exponent(
  small: { readonly size: number; readonly value: number },
  large: { readonly size: number; readonly value: number },
): number {
  return Math.log(large.value / small.value) / Math.log(large.size / small.size)
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}

export function machine(): string {
  const [first] = cpus()
  const gigabytes = (totalmem() / 2 ** 30).toFixed(0)
  return `${process.platform} ${process.arch}, ${cpus().length} × ${first?.model.trim() ?? 'unknown processor'}, ${gigabytes} GB, Node ${process.version}`
}
