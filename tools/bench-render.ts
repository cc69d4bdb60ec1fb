/**
 * The PDF renderer as a whole process against a bare pdfkit script that writes the same marks: the demo's pages, over
 * and over, 30 and 300 of them; and what memory more pages take. Medians of several rounds.
 *
 *     tsx tools/bench-render.ts [ROUNDS]
 */
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { bundle } from './bench/bundle.ts'
import { barePage } from './bench/marks.ts'
import { writeMarks } from './bench/marks-file.ts'
import {
  type Measured,
  machine,
  measureInTurn,
  measureProcess,
  median,
  medianTable,
} from './bench/measure.ts'
import { packetOf } from './bench/packet-of.ts'

const rounds = Number(process.argv[2] ?? 7)
const at = (path: string): string => fileURLToPath(new URL(`../${path}`, import.meta.url))
const folder = at('out/bench')
mkdirSync(folder, { recursive: true })

writePages()
await bundle(at('tools/bench/render.ts'), `${folder}/render.mjs`)

const floor = (count: number) => (): Measured =>
  measureProcess(
    [at('tools/bench/floor.mjs'), `${folder}/marks.json`, `${folder}/floor.pdf`, `${count}`],
    folder,
  )
const render = (count: number) => (): Measured =>
  measureProcess(
    [`${folder}/render.mjs`, `${folder}/pages.json`, `${folder}/render-${count}.pdf`, `${count}`],
    folder,
  )
const measured = measureInTurn(rounds, {
  'floor, 30 pages': floor(30),
  'render, 30 pages': render(30),
  'floor, 300 pages': floor(300),
  'render, 300 pages': render(300),
  'render, 900 pages': render(900),
})

console.log(`${machine()}; ${rounds} rounds, medians`)
const of = (name: keyof typeof measured, key: 'wall' | 'cpu' | 'memory') =>
  median(measured[name].map(one => one[key]))
console.table(medianTable(measured))

const goal = 1.3
for (const count of [30, 300] as const) {
  const ratio = of(`render, ${count} pages`, 'wall') / of(`floor, ${count} pages`, 'wall')
  const verdict = count === 30 ? '' : `; goal ${goal}: ${ratio <= goal ? 'reached' : 'NOT reached'}`
  console.log(`${count} pages: ${ratio.toFixed(2)} times the floor${verdict}`)
}
const more = of('render, 900 pages', 'memory') - of('render, 300 pages', 'memory')
const file = statSync(`${folder}/render-900.pdf`).size - statSync(`${folder}/render-300.pdf`).size
console.log(
  `600 pages more take ${megabytes(more)} MB of memory more, and the file is ${megabytes(file)} MB larger`,
)

function megabytes(bytes: number): string {
  return (bytes / 2 ** 20).toFixed(1)
}

/** The demo's pages as the renderer takes them, and as bare marks for the floor. */
function writePages(): void {
  const { laid, fonts, bytes } = packetOf(
    readFileSync(at('examples/cliff-railway/cliff-railway.yaml'), 'utf8'),
    {},
  )
  const pages = [...laid.packet.pages]
  const files = (weight: 'regular' | 'bold'): readonly string[] =>
    bytes[weight].map((file, i) => {
      const name = `${folder}/${weight}-${i}.ttf`
      writeFileSync(name, file)
      return name
    })
  const both = { regular: files('regular'), bold: files('bold') }
  writeFileSync(`${folder}/pages.json`, JSON.stringify({ fonts: both, pages }))
  writeMarks(
    folder,
    'marks',
    pages.map(page => barePage(page, fonts)),
    bytes,
  )
}
