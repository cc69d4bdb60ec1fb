import { expect, test } from 'vitest'
import type { Page } from '../../src/drawing/page.ts'
import { renderPdf } from '../../src/render/pdf/render-pdf.ts'
import { renderSvgPage } from '../../src/render/svg/render-page.ts'
import { compareWithGolden } from '../readback/golden.ts'
import { difference, paintPdf, paintSvg, readPng, strayInk, writePng } from '../readback/raster.ts'
import { bundledFonts } from '../text/bundled-font.ts'
import { lettering, lineKinds, packet, placedDrawings, samplePage } from './sample-page.ts'

const fonts = bundledFonts()

test.each([
  ['kinds-of-line-are-told-by-width-and-dashes', lineKinds],
  ['lettering-with-fractions-signs-and-codes', lettering],
  ['a-drawing-as-it-is-and-turned', placedDrawings],
])('golden: %s', async (name, page: () => Page) => {
  const [picture] = await paintPdf(await renderPdf(packet([page()]), fonts, '0'))
  compareWithGolden(name, picture!)
})

/** Three times that of the goldens: here a line is two pixels wide and its place is seen to 0.1 mm. */
const fine = 300

test('the PDF and the SVG of one page, painted by two engines, have their ink at the same places', async () => {
  const page = samplePage()
  const [pdf] = await paintPdf(await renderPdf(packet([page]), fonts, '0'), fine)
  const svg = paintSvg(renderSvgPage(page, packet([page]), fonts), fine)
  expect(strayInk(pdf!, svg)).toBe(0)
  expect(difference(pdf!, svg).pixels / pdf!.grey.length).toBeLessThan(0.001)
})

test('the two pictures would not agree with a drawing 0.3 mm aside', async () => {
  const page = samplePage()
  const [pdf] = await paintPdf(await renderPdf(packet([page]), fonts, '0'), fine)
  const aside = {
    ...page,
    placed: page.placed.map(p => ({ ...p, matrix: { ...p.matrix, e: p.matrix.e + 0.3 } })),
  }
  expect(strayInk(pdf!, paintSvg(renderSvgPage(aside, packet([aside]), fonts), fine))).toBeGreaterThan(1000)
})

test('a printer correction moves the ink of both files alike', async () => {
  const page = { ...samplePage(), correction: { a: 1.02, b: 0.01, c: -0.005, d: 0.98, e: 1, f: -2 } }
  const [pdf] = await paintPdf(await renderPdf(packet([page]), fonts, '0'), fine)
  expect(strayInk(pdf!, paintSvg(renderSvgPage(page, packet([page]), fonts), fine))).toBe(0)
})

test('a picture is the same after writing and reading', () => {
  const picture = { width: 2, height: 3, grey: Uint8Array.of(0, 50, 100, 150, 200, 255) }
  expect(readPng(writePng(picture))).toEqual(picture)
})
