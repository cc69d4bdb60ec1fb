import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { inflateSync } from 'node:zlib'
import { build } from 'esbuild'
import { expect, test } from 'vitest'
import { renderPdf } from '../../src/render/pdf/render-pdf.ts'
import { renderSvgPage } from '../../src/render/svg/render-page.ts'
import type { loadFont } from '../../src/text/font.ts'
import { bundledFonts, fontFiles } from '../text/bundled-font.ts'
import { packet, samplePage } from './sample-page.ts'

const entry = `
  export { renderPdf } from './render/pdf/render-pdf.ts'
  export { renderSvgPage } from './render/svg/render-page.ts'
  export { loadFont } from './text/font.ts'
`

type Bundle = {
  readonly renderPdf: typeof renderPdf
  readonly renderSvgPage: typeof renderSvgPage
  readonly loadFont: typeof loadFont
}

test('bundled for a browser, without anything of Node, text and renderers write the same pages', async () => {
  const { outputFiles } = await build({
    stdin: {
      contents: entry,
      resolveDir: fileURLToPath(new URL('../../src', import.meta.url)),
      loader: 'ts',
    },
    bundle: true,
    // a module of Node is an error on this platform
    platform: 'browser',
    format: 'esm',
    write: false,
    logLevel: 'silent',
  })
  const folder = mkdtempSync(join(tmpdir(), 'paperjig-'))
  try {
    const file = join(folder, 'bundle.mjs')
    writeFileSync(file, outputFiles[0]!.contents)
    const bundle = (await import(/* @vite-ignore */ pathToFileURL(file).href)) as Bundle
    const fonts = { regular: bundle.loadFont(fontFiles()), bold: bundle.loadFont(fontFiles('bold')) }
    const pages = packet([samplePage()])
    const [there, here] = await Promise.all([
      bundle.renderPdf(pages, fonts, '0'),
      renderPdf(pages, bundledFonts(), '0'),
    ])
    expect(streams(there)).toEqual(streams(here))
    expect(bundle.renderSvgPage(samplePage(), pages, fonts)).toBe(
      renderSvgPage(samplePage(), pages, bundledFonts()),
    )
  } finally {
    rmSync(folder, { recursive: true })
  }
})

/** What the streams of a file hold: two packers may pack the same differently. */
function streams(bytes: Uint8Array): readonly string[] {
  const source = Buffer.from(bytes).toString('latin1')
  const found = [...source.matchAll(/\/Filter \/FlateDecode\n>>\nstream\n([\s\S]*?)\nendstream/g)]
  expect(found.length).toBeGreaterThan(5)
  return found.map(([, packed]) => inflateSync(Buffer.from(packed!, 'latin1')).toString('latin1'))
}
