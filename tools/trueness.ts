/**
 * Prints every example, and plans of large and odd sizes, as PDF and SVG, reads the files back with readers of other
 * makers and says how far they are from the exact model at the worst, in millimetres.
 *
 *     npm run trueness
 */
import { printable } from '../src/number/tolerance.ts'
import { perfect, type Trueness, worse } from '../tests/trueness/compare.ts'
import { measurePlan, somePrinter } from '../tests/trueness/measure.ts'
import { papersToMeasure, plansToMeasure } from '../tests/trueness/plans.ts'

const columns = Object.keys(perfect) as (keyof Trueness)[]
const row = (cells: readonly string[]): string =>
  cells.map((cell, i) => (i < 3 ? cell.padEnd([24, 18, 17][i]!) : cell.padStart(9))).join(' ')
const numbers = (trueness: Trueness): readonly string[] => columns.map(c => trueness[c].toFixed(6))

console.log('worst deviation from the model in the finished file, mm\n')
console.log(row(['plan', 'paper', 'format', 'pages', ...columns]))
let worst = perfect
for (const { name, text } of plansToMeasure()) {
  for (const paper of papersToMeasure) {
    for (const printer of [undefined, somePrinter]) {
      for (const { plan, format, pages, trueness } of await measurePlan(name, text, paper, printer)) {
        const on = printer === undefined ? paper : `${paper}, corrected`
        console.log(row([plan, on, format, `${pages}`, ...numbers(trueness)]))
        worst = worse(worst, trueness)
      }
    }
  }
}
console.log(row(['worst of all', '', '', '', ...numbers(worst)]))
if (Math.max(...columns.map(c => worst[c])) >= printable) {
  console.error(`that is more than ${printable} mm`)
  process.exitCode = 1
}
