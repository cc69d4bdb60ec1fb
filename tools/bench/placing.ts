import { exponent, machine, median } from './measure.ts'

/** Milliseconds that something takes, by the clock. */
export function time(run: () => void): number {
  const start = performance.now()
  run()
  return performance.now() - start
}

/** What placing took and what the floor took, in milliseconds, and how many things found no room. */
export type Placed = { readonly placing: number; readonly floor: number; readonly left: number }

/** Medians of several rounds; `round` does one and says what it took. The first warms up and does not count. */
export function placedInRounds(rounds: number, round: () => Placed): Placed {
  const all = Array.from({ length: rounds + 1 }, round)
  const counted = all.slice(1)
  return {
    placing: median(counted.map(({ placing }) => placing)),
    floor: median(counted.map(({ floor }) => floor)),
    left: all.at(-1)!.left,
  }
}

/** Prints a table of how long placing takes by number and layout, with the exponent by which that grows. */
export function placingTable(
  what: string,
  layouts: readonly (readonly [name: string, spacing: number])[],
  counts: readonly number[],
  measure: (count: number, spacing: number, layout: string) => Placed,
): void {
  console.log(`${machine()}\n`)
  console.log(`| they stand | ${what} | found no room | ms | µs each | floor ms | ratio |`)
  console.log('| --- | ---: | ---: | ---: | ---: | ---: | ---: |')
  for (const [name, spacing] of layouts) {
    const times = counts.map(count => {
      const { placing, floor, left } = measure(count, spacing, name)
      const each = ((placing * 1000) / count).toFixed(0)
      const ratio = (placing / floor).toFixed(1)
      console.log(
        `| ${name} | ${count} | ${left} | ${placing.toFixed(2)} | ${each} | ${floor.toFixed(2)} | ${ratio} |`,
      )
      return placing
    })
    // the first size warms the program up and says little
    const at = (i: number) => ({ size: counts.at(i)!, value: times.at(i)! })
    const growth = exponent(at(1), at(-1)).toFixed(2)
    console.log(`${name}: growth exponent from ${counts[1]} to ${counts.at(-1)} ${what} ${growth}`)
  }
}
