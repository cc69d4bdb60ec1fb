/**
 * Reading, working out and checking a generated plan, beside a floor: the same text parsed by the yaml package alone,
 * in the same run. Warm medians in milliseconds, and how the time grows from 100 to 1,000 parts: an exponent of 1 is
 * in step with the parts.
 *
 *   npx tsx tools/bench-check.ts [--quick]
 */
import { cpus } from 'node:os'
import { parse } from 'yaml'
import { check } from '../src/check/registry.ts'
import { buildModel } from '../src/model/build/model.ts'
import { readPlan } from '../src/plan/read-plan.ts'
import { defaultWorkshop } from '../src/workshop/defaults.ts'
import { largePlan } from '../tests/check/large-plan.ts'

const sizes = [100, 1000]
const wantedExponent = 1.1
const runs = process.argv.includes('--quick') ? 3 : 9

const stages = ['yaml package alone', 'read', 'work out', 'check', 'all three'] as const
type Times = Readonly<Record<(typeof stages)[number], number>>

function once(text: string): Times {
  const laps: number[] = []
  let last = performance.now()
  const lap = () => {
    const now = performance.now()
    laps.push(now - last)
    last = now
  }
  parse(text)
  lap()
  const { plan } = readPlan(text, 'pier.yaml')
  lap()
  const { model } = buildModel(plan!, defaultWorkshop)
  lap()
  const findings = check(model!, defaultWorkshop)
  lap()
  if (findings.length > 0) throw new Error(`the plan has a fault: ${JSON.stringify(findings[0])}`)
  const [floor, read, build, checked] = laps as [number, number, number, number]
  return {
    'yaml package alone': floor,
    read,
    'work out': build,
    check: checked,
    'all three': read + build + checked,
  }
}

function medians(text: string): Times {
  once(text)
  const all = Array.from({ length: runs }, () => once(text))
  const median = (stage: (typeof stages)[number]) =>
    all.map(times => times[stage]).sort((a, b) => a - b)[Math.floor(runs / 2)]!
  return Object.fromEntries(stages.map(stage => [stage, median(stage)])) as Times
}

const [small, large] = sizes.map(size => medians(largePlan(size))) as [Times, Times]
console.log(
  `${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.versions.node}; ${runs} runs, medians in ms`,
)
const columns = ['', ...sizes.map(n => `${n} parts`), 'growth exponent', 'over the floor']
console.log(columns.map((c, i) => (i === 0 ? c.padEnd(20) : c.padStart(16))).join(''))
for (const stage of stages) {
  const exponent = Math.log10(large[stage] / small[stage]) / Math.log10(sizes[1]! / sizes[0]!)
  const ratio = large[stage] / large['yaml package alone']
  const cells = [small[stage].toFixed(1), large[stage].toFixed(1), exponent.toFixed(2), ratio.toFixed(2)]
  console.log(stage.padEnd(20) + cells.map(cell => cell.padStart(16)).join(''))
  if (stage === 'all three' && exponent > wantedExponent) {
    console.log(`the growth exponent is above ${wantedExponent}`)
    process.exitCode = 1
  }
}
