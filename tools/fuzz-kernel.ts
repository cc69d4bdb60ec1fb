/**
 * Hours of random shapes against the laws that booleans obey.
 *
 *   npm run fuzz -- --cases 100000 --seed 7 --seconds 3600
 *
 * Case n of seed s is the case that tests/geometry/boolean/random-cases.ts makes of s + n, so a failure printed
 * here is run again with `--cases 1 --seed <its number>`. `--keep` writes such cases into tests/geometry/corpus,
 * to be renamed after what went wrong. Ends with exit code 1 when a law was broken.
 */
import { writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { brokenLaws } from '../tests/geometry/boolean/laws.ts'
import { randomCase } from '../tests/geometry/boolean/random-cases.ts'
import { encodeRegions } from '../tests/geometry/corpus/corpus.ts'

const { values } = parseArgs({
  options: {
    cases: { type: 'string', default: '100000' },
    seed: { type: 'string', default: String(Math.floor(Math.random() * 1e9)) },
    seconds: { type: 'string', default: '36000' },
    keep: { type: 'boolean', default: false },
  },
})
const seed = Number(values.seed)
const cases = Number(values.cases)
const stopAt = performance.now() + 1000 * Number(values.seconds)
const failures: Record<string, number> = {}
let failed = 0
let done = 0

console.log(`seed ${seed}`)
for (; done < cases && performance.now() < stopAt; done++) {
  const number = seed + done
  const made = randomCase(number)
  let broken: readonly string[]
  try {
    broken = brokenLaws(made.first, made.second, number)
  } catch (error) {
    broken = [`thrown: ${error instanceof Error ? error.stack : error}`]
  }
  if (broken.length === 0) continue
  failed++
  failures[made.kind] = (failures[made.kind] ?? 0) + 1
  if (values.keep) {
    const kept = { first: encodeRegions(made.first), second: encodeRegions(made.second) }
    writeFileSync(
      new URL(`../tests/geometry/corpus/case-${number}.json`, import.meta.url),
      JSON.stringify(kept),
    )
  }
  if (failed <= 40) console.log(`${number} (${made.kind}): ${broken.slice(0, 3).join('; ')}`)
}
console.log(`${done} cases from seed ${seed}: ${failed} failed`)
for (const [kind, count] of Object.entries(failures)) console.log(`  ${kind}: ${count}`)
process.exitCode = failed > 0 ? 1 : 0
