import { readFile } from 'node:fs/promises'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { printPdf, printSvg } from '../../src/app/index.ts'
import { readFonts } from '../../src/cli/input/read-fonts.ts'
import { bundleForBrowser } from './bundle.ts'
import { openChromium, pageWith } from './chromium.ts'
import type { Job, Printed } from './page.ts'
import { uncompressed } from './uncompressed.ts'

const file = 'cliff-railway.yaml'
const version = '0'
const base64 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('base64')

let browser: Browser | undefined
let inBrowser: Printed
let inNode: Printed

beforeAll(async () => {
  const plan = await readFile(new URL(`../../examples/cliff-railway/${file}`, import.meta.url), 'utf8')
  const fonts = readFonts()
  const text = { text: plan, file }
  const { pdf, findings } = await printPdf(text, {}, { fonts, version })
  const { files } = printSvg(text, {}, { fonts })
  inNode = {
    pdf: base64(pdf!),
    svg: files.map(({ name, bytes }) => ({ name, text: Buffer.from(bytes).toString('utf8') })),
    rules: findings.map(({ rule }) => rule),
  }

  browser = await openChromium()
  const page = await pageWith(browser, await bundleForBrowser(new URL('page.ts', import.meta.url)))
  const job: Job = { plan, file, version, regular: fonts.regular.map(base64), bold: fonts.bold.map(base64) }
  inBrowser = await page.evaluate(
    given => (globalThis as unknown as { printJob: (job: Job) => Promise<Printed> }).printJob(given),
    job,
  )
})

afterAll(() => browser?.close())

test('a browser finds in the demo what Node finds', () => {
  expect(inBrowser.rules).toEqual(expect.arrayContaining(['position-missing', 'outside-part']))
  expect(inBrowser.rules).toEqual(inNode.rules)
})

test('a browser draws the demo as SVG to the same byte as Node', () => {
  expect(inBrowser.svg.length).toBeGreaterThan(20)
  expect(inBrowser.svg).toEqual(inNode.svg)
})

test('a browser prints the demo as PDF as Node does; only how it is compressed may differ', () => {
  const [there, here] = [inBrowser.pdf, inNode.pdf].map(text => uncompressed(Buffer.from(text, 'base64')))
  expect(here!.length).toBeGreaterThan(40)
  expect(here!.join('\n')).toContain(' Tj')
  expect(there!.length).toBe(here!.length)
  expect(there!.filter((object, i) => object !== here![i])).toEqual([])
})
