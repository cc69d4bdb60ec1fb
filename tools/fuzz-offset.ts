/**
 * Random offsets of regions and paths against the laws of their joins and ends.
 *
 *   npx tsx tools/fuzz-offset.ts --cases 100000 --seed 7 --seconds 3600
 *
 * Case n of seed s is the case that tests/geometry/offset/fuzz-offset.ts makes of s + n; a few seeds make none. A
 * failure printed here is run again with `--cases 1 --seed <its number>`. Ends with exit code 1 when a law was broken.
 */
import { parseArgs } from 'node:util'
import { offsetCase, troubleWith } from '../tests/geometry/offset/fuzz-offset.ts'

const { values } = parseArgs({
  options: {
    cases: { type: 'string', default: '100000' },
    seed: { type: 'string', default: String(Math.floor(Math.random() * 1e9)) },
    seconds: { type: 'string', default: '36000' },
  },
})
const first = Number(values.seed)
const end = first + Number(values.cases)
const stopAt = performance.now() + 1000 * Number(values.seconds)
let run = 0
let failed = 0

console.log(`seed ${first}`)
for (let seed = first; seed < end && performance.now() < stopAt; seed++) {
  const asked = offsetCase(seed)
  if (asked === undefined) continue
  run++
  const trouble = troubleWith(asked, seed)
  if (trouble === undefined) continue
  failed++
  console.log(`${seed}: ${JSON.stringify(trouble)}`)
}
console.log(`${run} cases from seed ${first}: ${failed} failed`)
process.exitCode = failed > 0 ? 1 : 0
