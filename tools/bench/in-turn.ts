import { median } from './measure.ts'

/** A call of a candidate takes about this long, in ms: shorter ones are made several times over. */
const atLeast = 4
/** For how much processor time a call is made to warm up, in ms: the compiler needs some hundred. */
const warmUp = 400
/** For how much processor time the calls of one row are measured, in ms, and how often at least. */
const budget = 1_200
const fewest = 5

/** Milliseconds of processor time since `from`, garbage collection with it. */
function spent(from?: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(from)
  return (user + system) / 1000
}

export type InTurn = { readonly ms: number; readonly ratio: number }

/**
 * Measures calls in turn, round by round, so that what else the machine does falls on all alike: processor time in
 * milliseconds for each call, and the median over the rounds of its ratio to the first. Each turn begins with a call
 * that is not counted: what the one before left to collect and to load again is not its own.
 */
export function inTurn(calls: readonly (() => void)[]): readonly InTurn[] {
  const repeats = calls.map(call => {
    const begin = process.cpuUsage()
    do call()
    while (spent(begin) < warmUp)
    const from = process.cpuUsage()
    call()
    return Math.max(1, Math.ceil(atLeast / Math.max(spent(from), atLeast / 1000)))
  })
  const times: number[][] = calls.map(() => [])
  const begin = process.cpuUsage()
  let rounds = 0
  do {
    calls.forEach((call, k) => {
      call()
      const from = process.cpuUsage()
      for (let r = 0; r < repeats[k]!; r++) call()
      times[k]!.push(spent(from) / repeats[k]!)
    })
    rounds++
  } while (rounds < fewest || spent(begin) < budget)
  return times.map(list => ({
    ms: median(list),
    ratio: median(list.map((ms, round) => ms / times[0]![round]!)),
  }))
}
