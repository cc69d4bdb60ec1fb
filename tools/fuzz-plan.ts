/**
 * Reads mutated plans and works them out for as long as wanted, and stops at the first one that breaks the promise:
 *
 *     npx tsx tools/fuzz-plan.ts [--seed N] [--cases N] [--seconds N]
 *
 * The plans are the examples and those beside the tests. A broken case is printed with the seed that makes it again
 * (`--seed THAT --cases 1`) and written beside this run as fuzz-case.yaml in the folder for temporary files.
 */
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { everyKey } from '../tests/plan/every-key.ts'
import { mutate, randomFrom } from '../tests/plan/mutate.ts'
import { keptPromiseOfModel } from '../tests/plan/promise.ts'

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: String(Date.now() % 2 ** 31) },
    cases: { type: 'string', default: '10000' },
    seconds: { type: 'string', default: '3600' },
  },
})
const seed = Number(values.seed)
const cases = Number(values.cases)
const plans = [
  everyKey,
  ...['cliff-car', 'pier-bracket', 'the-contract'].map(name =>
    readFileSync(new URL(`../tests/plan/fixtures/plans/${name}.yaml`, import.meta.url), 'utf8'),
  ),
  ...['cliff-railway', 'garden-gate'].map(name =>
    readFileSync(new URL(`../examples/${name}/${name}.yaml`, import.meta.url), 'utf8'),
  ),
]

console.log(`seed ${seed}, ${cases} cases, at most ${values.seconds} s`)
const start = performance.now()
const rules = new Map<string, number>()
let sound = 0
let slowest = { milliseconds: 0, seed }
let done = 0
for (; done < cases && performance.now() - start < Number(values.seconds) * 1000; done += 1) {
  const caseSeed = seed + done
  const random = randomFrom(caseSeed)
  const input = mutate(plans[Math.floor(random() * plans.length)]!, random)
  const begun = performance.now()
  try {
    const { plan, findings } = keptPromiseOfModel(input)
    if (plan) sound += 1
    for (const { rule } of findings) rules.set(rule, (rules.get(rule) ?? 0) + 1)
  } catch (problem) {
    const file = join(mkdtempSync(join(tmpdir(), 'fuzz-')), 'fuzz-case.yaml')
    writeFileSync(file, input)
    console.error(`seed ${caseSeed}: ${problem instanceof Error ? problem.stack : problem}\n${file}`)
    process.exit(1)
  }
  const milliseconds = performance.now() - begun
  if (milliseconds > slowest.milliseconds) slowest = { milliseconds, seed: caseSeed }
}
const seconds = (performance.now() - start) / 1000
console.log(`${done} cases in ${seconds.toFixed(1)} s: ${sound} plans, the others with findings`)
console.log(`slowest ${slowest.milliseconds.toFixed(0)} ms (seed ${slowest.seed})`)
for (const [rule, count] of [...rules].sort((a, b) => b[1] - a[1]))
  console.log(`${String(count).padStart(8)} ${rule}`)
