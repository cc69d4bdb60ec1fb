/**
 * Paper: `print` of plans of about 30 and 300 pages as whole processes against a bare pdfkit script that writes the same
 * marks, and stage by stage; its memory; its growth up to a plan of 1,000 parts; packing and tiling by themselves.
 * Medians of several rounds, in turn. On A3 every drawing of these plans fits a page, on A4 it goes over several.
 *
 *     tsx tools/bench-paper.ts [--quick]
 */
import { mkdirSync, statSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import about from '../package.json' with { type: 'json' }
import { largePlan } from '../tests/check/large-plan.ts'
import { bundle } from './bench/bundle.ts'
import { barePage } from './bench/marks.ts'
import { writeMarks } from './bench/marks-file.ts'
import {
  exponent,
  type Measured,
  machine,
  measureInTurn,
  measureProcess,
  median,
  medianTable,
} from './bench/measure.ts'
import { packetOf } from './bench/packet-of.ts'
import { packing, tiling } from './bench/paper-alone.ts'

const quick = process.argv.includes('--quick')
const rounds = quick ? 2 : 7
const ratioWanted = 1.3
const exponentWanted = 1.1

const at = (path: string): string => fileURLToPath(new URL(`../${path}`, import.meta.url))
const folder = at('out/bench')
mkdirSync(folder, { recursive: true })
await bundle(at('tools/bench/stages.ts'), `${folder}/stages.mjs`)

console.log(`Paperjig ${about.version}; ${machine()}; ${rounds} rounds, medians`)
againstTheFloor('a3', 6, 58)
againstTheFloor('a4', 5, 48)
growth()
packingAlone()
tilingAlone()

function planFile(parts: number): string {
  const path = `${folder}/plan-${parts}.yaml`
  writeFileSync(path, largePlan(parts))
  return path
}

function run(...words: readonly string[]): Measured {
  return measureProcess(words, folder)
}

/** `print` beside the floor, for a plan of about 30 pages and one of about 300. */
function againstTheFloor(paper: string, few: number, many: number): void {
  const cases = [few, many].map(parts => {
    const plan = planFile(parts)
    const { laid, fonts, bytes } = packetOf(largePlan(parts), { paper })
    const pages = [...laid.packet.pages].map(page => barePage(page, fonts))
    const marks = writeMarks(folder, `marks-${paper}-${parts}`, pages, bytes)
    return { plan, marks, parts, pages: pages.length }
  })
  const named = cases.flatMap(({ plan, marks, parts, pages }) => [
    [`floor, ${pages} pages`, () => run(at('tools/bench/floor.mjs'), marks, `${folder}/floor.pdf`)] as const,
    [
      `print, ${pages} pages`,
      () =>
        run(
          at('dist/cli/paperjig.js'),
          'print',
          plan,
          '--paper',
          paper,
          '-o',
          `${folder}/${paper}-${parts}.pdf`,
        ),
    ] as const,
    [`stages, ${pages} pages`, () => run(`${folder}/stages.mjs`, plan, paper)] as const,
  ])
  const measured = measureInTurn(rounds, Object.fromEntries(named))
  const shown = named.map(([name]) => name).filter(name => !name.startsWith('stages'))
  console.log(`\nOn ${paper}, plans of ${few} and ${many} parts:`)
  console.table(medianTable(measured, shown))
  const of = (name: string, key: 'wall' | 'cpu' | 'memory') => median(measured[name]!.map(one => one[key]))
  for (const { pages } of cases) {
    const over = (key: 'wall' | 'cpu') => of(`print, ${pages} pages`, key) / of(`floor, ${pages} pages`, key)
    const ratio = over('wall')
    const verdict =
      pages < 100 ? '' : `; goal ${ratioWanted}: ${ratio <= ratioWanted ? 'reached' : 'NOT reached'}`
    console.log(
      `${pages} pages: ${ratio.toFixed(2)} times the floor on the clock, ${over('cpu').toFixed(2)} on the processor${verdict}`,
    )
  }
  const [small, large] = cases.map(({ parts, pages }) => ({
    pages,
    file: statSync(`${folder}/${paper}-${parts}.pdf`).size,
    print: of(`print, ${pages} pages`, 'memory'),
    floor: of(`floor, ${pages} pages`, 'memory'),
  })) as [Memory, Memory]
  console.log(
    `${large.pages - small.pages} pages more take ${megabytes(large.print - small.print)} MB more at the peak, ` +
      `the floor ${megabytes(large.floor - small.floor)} MB; the file is ${megabytes(large.file - small.file)} MB larger`,
  )
  for (const { pages } of cases) stageTable(pages, measured[`stages, ${pages} pages`]!)
}

type Memory = {
  readonly pages: number
  readonly file: number
  readonly print: number
  readonly floor: number
}

function stageTable(pages: number, runs: readonly Measured[]): void {
  const each = runs.map(({ out }) => JSON.parse(out) as Record<string, number>)
  console.log(`One cold run of ${pages} pages, stage by stage, in ms:`)
  for (const stage of Object.keys(each[0]!)) {
    const ms = median(each.map(one => one[stage]!))
    console.log(`  ${ms.toFixed(1).padStart(8)}  ${stage}`)
  }
}

/** The whole command on plans of more and more parts. */
function growth(): void {
  const sizes = [125, 250, 500, 1000]
  const named = sizes.map(parts => {
    const plan = planFile(parts)
    return [
      `${parts} parts`,
      () => run(at('dist/cli/paperjig.js'), 'print', plan, '-o', `${folder}/growth.pdf`),
    ] as const
  })
  const measured = measureInTurn(quick ? 1 : 3, Object.fromEntries(named))
  console.log('\nprint on A4 as a whole process, by the number of parts:')
  console.table(medianTable(measured))
  // the start of a process would make the growth look less than it is; what else the machine does tells on the clock
  const points = sizes.slice(-3).map(size => ({
    size,
    value: median(measured[`${size} parts`]!.map(({ cpu }) => cpu)),
  }))
  const power = exponent(points[0]!, points.at(-1)!)
  const last = exponent(points.at(-2)!, points.at(-1)!)
  console.log(
    `growth exponent of processor time from 250 to 1,000 parts ${power.toFixed(2)}, of the last doubling ${last.toFixed(2)}; ` +
      `goal ${exponentWanted}: ${power <= exponentWanted ? 'reached' : 'NOT reached'}`,
  )
}

function packingAlone(): void {
  const sizes = quick ? [10, 40, 160] : [10, 40, 160, 640]
  const all = sizes.map(parts => packing(parts, rounds))
  console.log('\nPacking by itself, warm, invented templates on Letter:')
  console.table(
    all.map(({ items, ms, pages, areaBound }) => ({
      items,
      ms: ms.toFixed(1),
      'ms an item': (ms / items).toFixed(3),
      pages,
      'at least, by area': areaBound,
    })),
  )
  console.log(powers(all.map(({ items, ms }) => ({ size: items, value: ms }))))
}

function tilingAlone(): void {
  const sides = quick ? [300, 600, 1200] : [300, 600, 1200, 2400]
  const all = sides.map(side => tiling(side, 40, rounds))
  console.log('\nTiling by itself, warm, a square plate with a hole in every 40 mm on Letter:')
  console.table(
    all.map(({ marks, ms, tiles }) => ({
      marks,
      ms: ms.toFixed(1),
      'ms a tile': (ms / tiles).toFixed(2),
      tiles,
    })),
  )
  console.log(powers(all.map(({ tiles, ms }) => ({ size: tiles, value: ms }))))
}

function powers(points: readonly { readonly size: number; readonly value: number }[]): string {
  const each = points
    .slice(1)
    .map((point, i) => `${points[i]!.size} to ${point.size}: ${exponent(points[i]!, point).toFixed(2)}`)
  return `growth exponents, ${each.join('; ')}`
}

function megabytes(bytes: number): string {
  return (bytes / 2 ** 20).toFixed(1)
}
