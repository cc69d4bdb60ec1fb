/**
 * A block with 2,000 holes on six faces: its check and its print, stage by stage, beside the floor of writing the same
 * marks with pdfkit alone, all in one run. And how the check for holes that meet grows from 500 to 4,000 holes: an
 * exponent of 1 is in step with the holes.
 *
 *     npx tsx tools/bench-inside.ts [--quick]
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { readModel } from '../src/app/read-model.ts'
import { holesMeetInside } from '../src/check/inside/holes-meet-inside.ts'
import { subjectOf } from '../src/check/subject/subject.ts'
import { featuresMeet } from '../src/check/wood/features-meet.ts'
import type { Model } from '../src/model/part.ts'
import { defaultWorkshop } from '../src/workshop/defaults.ts'
import { largeBlock } from '../tests/check/inside/large-block.ts'
import { bundle } from './bench/bundle.ts'
import { inTurn } from './bench/in-turn.ts'
import { type Measured, machine, measureInTurn, measureProcess, median } from './bench/measure.ts'
import { writePlanMarks } from './bench/plan-marks.ts'

const quick = process.argv.includes('--quick')
const rounds = quick ? 1 : 3
const sizes = [500, 1000, 2000, 4000]
const holes = 2000
const wantedExponent = 1.2
const at = (path: string): string => fileURLToPath(new URL(`../${path}`, import.meta.url))
const folder = at('out/bench')

mkdirSync(folder, { recursive: true })
console.log(`${machine()}\n`)
growth()
await stages()

/** What it takes to know which holes meet: every hole as a body, the near ones asked, and those of one face too. */
function meetings(model: Model): void {
  const subject = subjectOf(model, defaultWorkshop)
  const found = [...holesMeetInside.find(subject), ...featuresMeet.find(subject)]
  if (found.length > 0) throw new Error(`the block has a fault: ${JSON.stringify(found[0])}`)
}

function growth(): void {
  const models = sizes.map(size => modelOfBlock(size))
  const counts = models.map(({ parts }) => parts[0]!.drawn.features.length)
  const times = inTurn(models.map(model => () => meetings(model)))
  console.log('Which holes meet, on six faces; processor time:')
  counts.forEach((count, i) => {
    const { ms, ratio } = times[i]!
    console.log(
      `  ${String(count).padStart(5)} holes ${ms.toFixed(1).padStart(9)} ms ${ratio.toFixed(2).padStart(7)} times the first`,
    )
  })
  const exponent = slope(
    counts.map(Math.log),
    times.map(({ ms }) => Math.log(ms)),
  )
  const reached = exponent <= wantedExponent
  console.log(
    `  growth exponent ${exponent.toFixed(2)}; at most ${wantedExponent}: ${reached ? 'reached' : 'NOT reached'}\n`,
  )
  if (!reached) process.exitCode = 1
}

/** The slope of the line that fits points best, by least squares. */
function slope(x: readonly number[], y: readonly number[]): number {
  const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length
  const [mx, my] = [mean(x), mean(y)]
  const along = x.reduce((sum, v, i) => sum + (v - mx) * (y[i]! - my), 0)
  return along / x.reduce((sum, v) => sum + (v - mx) ** 2, 0)
}

async function stages(): Promise<void> {
  const plan = `${folder}/block.yaml`
  writeFileSync(plan, largeBlock(holes))
  const counts = writePlanMarks(largeBlock(holes), folder, 'block-marks')
  await bundle(at('tools/bench/stages.ts'), `${folder}/stages.mjs`)
  const run =
    (...words: string[]) =>
    (): Measured =>
      measureProcess(words, folder)
  const measured = measureInTurn(rounds, {
    floor: run(at('tools/bench/floor.mjs'), `${folder}/block-marks.json`, `${folder}/block-floor.pdf`),
    stages: run(`${folder}/stages.mjs`, plan),
  })
  const floor = median(measured.floor.map(({ cpu }) => cpu))
  const whole = median(measured.stages.map(({ cpu }) => cpu))
  console.log(`The block of ${holes} holes, printed: ${counts}; ${rounds} rounds, medians`)
  console.log(
    `  the whole run ${whole.toFixed(0)} ms, the floor ${floor.toFixed(0)} ms of processor time: ${(whole / floor).toFixed(2)} times\n`,
  )
  const runs = measured.stages.map(({ out }) => JSON.parse(out) as Record<string, number>)
  const wall = median(measured.floor.map(one => one.wall))
  console.log('  Stage by stage, in ms, and as shares of the floor:')
  for (const stage of Object.keys(runs[0]!)) {
    const ms = median(runs.map(one => one[stage]!))
    console.log(`  ${ms.toFixed(1).padStart(9)} ${(ms / wall).toFixed(2).padStart(6)}  ${stage}`)
  }
}

function modelOfBlock(size: number): Model {
  const { model } = readModel({ text: largeBlock(size), file: 'block.yaml' })
  if (model === undefined) throw new Error('the block is no plan')
  return model
}
