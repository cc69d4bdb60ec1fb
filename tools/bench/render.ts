/**
 * Renders pages as PDF and does nothing else: what `floor.mjs` is measured against. Bundled by the bench before it runs.
 *
 *     node render.mjs PAGES.json OUT.pdf COUNT
 */
import { readFileSync, writeFileSync } from 'node:fs'
import type { Page } from '../../src/drawing/page.ts'
import { renderPdf } from '../../src/render/pdf/render-pdf.ts'
import { loadFont } from '../../src/text/font.ts'

const [file = '', out = '', count = '1'] = process.argv.slice(2)
const { pages, fonts } = JSON.parse(readFileSync(file, 'utf8')) as {
  readonly pages: readonly Page[]
  readonly fonts: Record<'regular' | 'bold', readonly string[]>
}
const load = (files: readonly string[]) => loadFont(files.map(name => readFileSync(name)))

function* repeated(): Generator<Page> {
  for (let i = 0; i < Number(count); i++) yield { ...pages[i % pages.length]!, number: i + 1 }
}

const packet = { title: 'bench', language: 'en', pages: repeated() }
writeFileSync(out, await renderPdf(packet, { regular: load(fonts.regular), bold: load(fonts.bold) }, '0'))
