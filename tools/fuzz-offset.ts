/**
 * Runs offset cases with the seeds from one number up to another and prints what breaks a law:
 * `tsx tools/fuzz-offset.ts 1 100000`.
 */
import { offsetCase, troubleWith } from '../tests/geometry/offset/fuzz-offset.ts'

const from = Number(process.argv[2] ?? 1)
const to = Number(process.argv[3] ?? from + 9_999)
let run = 0
let failed = 0
for (let seed = from; seed <= to; seed++) {
  const asked = offsetCase(seed)
  if (asked === undefined) continue
  run++
  const trouble = troubleWith(asked, seed)
  if (trouble === undefined) continue
  failed++
  console.log(`seed ${seed}:`, JSON.stringify(trouble))
}
console.log(`${run} cases of seeds ${from} to ${to}, ${failed} broke a law`)
process.exitCode = failed > 0 ? 1 : 0
