/**
 * The PDF renderer as a whole process against a bare pdfkit script that writes the same marks: the demo's pages, over
 * and over, 30 and 300 of them; and what memory more pages take. Medians of several rounds.
 *
 *     tsx tools/bench-render.ts [ROUNDS]
 */
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { layOutPacket } from '../src/app/lay-out-packet.ts'
import { openFonts } from '../src/app/open-fonts.ts'
import { readModel } from '../src/app/read-model.ts'
import { readFonts } from '../src/cli/input/read-fonts.ts'
import { bundle } from './bench/bundle.ts'
import { barePage } from './bench/marks.ts'
import { type Measured, machine, measureInTurn, measureProcess, median } from './bench/measure.ts'

const rounds = Number(process.argv[2] ?? 7)
const at = (path: string): string => fileURLToPath(new URL(`../${path}`, import.meta.url))
const folder = at('out/bench')
mkdirSync(folder, { recursive: true })

await writePages()
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
const names = Object.keys(measured) as (keyof typeof measured)[]
console.table(
  Object.fromEntries(
    names.map(name => [
      name,
      {
        'wall ms': of(name, 'wall').toFixed(0),
        'cpu ms': of(name, 'cpu').toFixed(0),
        'peak MB': megabytes(of(name, 'memory')),
      },
    ]),
  ),
)

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
async function writePages(): Promise<void> {
  const plan = at('examples/cliff-railway/cliff-railway.yaml')
  const bytes = await readFonts()
  const fonts = openFonts(bytes)
  const { model } = readModel({ text: readFileSync(plan), file: plan })
  const pages = [...layOutPacket(model!, {}, fonts, undefined).packet.pages]
  const files = (weight: 'regular' | 'bold'): readonly string[] =>
    bytes[weight].map((file, i) => {
      const name = `${folder}/${weight}-${i}.ttf`
      writeFileSync(name, file)
      return name
    })
  const [regular, bold] = [files('regular'), files('bold')]
  writeFileSync(`${folder}/pages.json`, JSON.stringify({ fonts: { regular, bold }, pages }))
  const bare = {
    fonts: { regular: regular[0], bold: bold[0] },
    pages: pages.map(page => barePage(page, fonts)),
  }
  writeFileSync(`${folder}/marks.json`, JSON.stringify(bare))
}
