/**
 * `print` of the demo as a whole process against a bare pdfkit script that writes the same marks, and stage by stage;
 * `--help` against bare `node`. Medians of several rounds; every figure stands beside the floor of the same run.
 *
 *     tsx tools/bench-print.ts [ROUNDS]
 */
import { mkdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import about from '../package.json' with { type: 'json' }
import { bundle } from './bench/bundle.ts'
import {
  type Measured,
  machine,
  measureInTurn,
  measureProcess,
  median,
  medianTable,
} from './bench/measure.ts'
import { writePlanMarks } from './bench/plan-marks.ts'

const rounds = Number(process.argv[2] ?? 15)
const at = (path: string): string => fileURLToPath(new URL(`../${path}`, import.meta.url))
const plan = at('examples/cliff-railway/cliff-railway.yaml')
const command = at('dist/cli/paperjig.js')
const folder = at('out/bench')

mkdirSync(folder, { recursive: true })
const counts = writePlanMarks(readFileSync(plan, 'utf8'), folder, 'marks')
await bundle(at('tools/bench/stages.ts'), `${folder}/stages.mjs`)

const run =
  (...words: string[]) =>
  (): Measured =>
    measureProcess(words, folder)
const measured = measureInTurn(rounds, {
  node: run('-e', '0'),
  help: run(command, '--help'),
  floor: run(at('tools/bench/floor.mjs'), `${folder}/marks.json`, `${folder}/floor.pdf`),
  print: run(command, 'print', plan, '-o', `${folder}/print.pdf`),
  stages: run(`${folder}/stages.mjs`, plan),
})

console.log(`Paperjig ${about.version}, pdfkit ${pdfkitVersion()}; ${machine()}`)
console.log(`${rounds} rounds, medians; the demo: ${counts}\n`)
console.table(medianTable(measured, ['node', 'help', 'floor', 'print']))
stageTable()
verdict()

function stageTable(): void {
  const runs = measured.stages.map(({ out }) => JSON.parse(out) as Record<string, number>)
  const stages = Object.keys(runs[0]!)
  console.log(
    'One cold run, stage by stage, in ms, without the compiled functions that the build keeps for the command:',
  )
  for (const stage of stages) {
    console.log(
      `  ${median(runs.map(one => one[stage]!))
        .toFixed(1)
        .padStart(7)}  ${stage}`,
    )
  }
  console.log()
}

/** The machine that the goals were written for starts node in this time; a slower one is given more in proportion. */
function verdict(): void {
  const usualNode = 60
  const of = (name: 'node' | 'help' | 'floor' | 'print', key: 'wall' | 'cpu') =>
    median(measured[name].map(one => one[key]))
  const goals = [
    { name: 'help over node', more: 'help', less: 'node', goal: 60 },
    { name: 'print over the floor', more: 'print', less: 'floor', goal: 150 },
  ] as const
  const slow = of('node', 'wall') / usualNode
  for (const { name, more, less, goal } of goals) {
    const [a, b] = [of(more, 'wall'), of(less, 'wall')]
    console.log(
      `${name}: ${(a - b).toFixed(0)} ms, ${(a / b).toFixed(2)} times; ` +
        `goal ${goal} ms × ${slow.toFixed(2)} for this machine = ${(goal * slow).toFixed(0)} ms: ` +
        `${a - b <= goal * slow ? 'reached' : 'NOT reached'}`,
    )
  }
}

function pdfkitVersion(): string {
  const path = createRequire(import.meta.url).resolve('pdfkit')
  const { version } = JSON.parse(readFileSync(path.replace(/js\/[^/]*$/, 'package.json'), 'utf8')) as {
    version: string
  }
  return version
}
