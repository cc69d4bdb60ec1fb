import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Page } from '../../src/drawing/page.ts'
import { identity } from '../../src/geometry/shape/matrix.ts'
import { point } from '../../src/geometry/shape/point.ts'
import { arc } from '../../src/geometry/shape/segment.ts'
import { printable } from '../../src/number/tolerance.ts'
import { renderPdf } from '../../src/render/pdf/render-pdf.ts'
import { renderSvgPage } from '../../src/render/svg/render-page.ts'
import { type Deviation, worstDeviation } from '../readback/deviation.ts'
import { readPdf } from '../readback/read-pdf.ts'
import { readSvg } from '../readback/read-svg.ts'
import { bundledFonts } from '../text/bundled-font.ts'
import { randomPage } from './random-page.ts'
import { packet, path, samplePage } from './sample-page.ts'

const fonts = bundledFonts()

async function pdfDeviation(page: Page): Promise<Deviation> {
  const [read] = await readPdf(await renderPdf(packet([page]), fonts, '0'))
  return worstDeviation(page, read!, fonts)
}

function svgDeviation(page: Page): Deviation {
  return worstDeviation(page, readSvg(renderSvgPage(page, packet([page]), fonts)), fonts)
}

test('a PDF of any page, read back, has every line and letter within 0.005 mm of where it should be', async () => {
  await fc.assert(
    fc.asyncProperty(randomPage, async page => {
      const { lines, text } = await pdfDeviation(page)
      expect(Math.max(lines, text)).toBeLessThan(printable)
    }),
    { numRuns: 60 },
  )
})

test('an SVG of any page, read back, has every line and letter within 0.005 mm of where it should be', () => {
  fc.assert(
    fc.property(randomPage, page => {
      const { lines, text } = svgDeviation(page)
      expect(Math.max(lines, text)).toBeLessThan(printable)
    }),
    { numRuns: 60 },
  )
})

test('the sample page is true in both files', async () => {
  const page = samplePage()
  expect((await pdfDeviation(page)).lines).toBeLessThan(0.0001)
  expect(svgDeviation(page).lines).toBeLessThan(0.00001)
  expect((await pdfDeviation(page)).text).toBeLessThan(0.0001)
  expect(svgDeviation(page).text).toBeLessThan(0.001)
})

test.each([0.5, 5, 50, 300, 1000, 3000])(
  'half turns and shallow arcs of radius %d mm are true',
  async radius => {
    const centre = point(1 / 3, -1 / 7)
    const on = (angle: number) =>
      point(centre.x + radius * Math.cos(angle), centre.y + radius * Math.sin(angle))
    const arcs = [1, Math.PI / 3, Math.PI / 2, Math.PI, 1.5 * Math.PI, 0.001].map(sweep => ({
      segments: [arc(on(0.3), on(0.3 + sweep), centre, 1)],
      closed: false,
    }))
    const page: Page = {
      paper: { name: 'custom', width: 500, height: 500 },
      number: 1,
      placed: [],
      furniture: [path('cut', 'cut', ...arcs)],
      correction: identity,
    }
    // a curve of 30 degrees strays 3.7e-7 of the radius, and the reader rounds to 32 bits
    expect((await pdfDeviation(page)).lines).toBeLessThan(0.0001 + 5e-7 * radius)
    expect(svgDeviation(page).lines).toBeLessThan(0.00003)
  },
)

test('the comparison sees a line that is a hundredth of a millimetre off, one that is missing and one too many', () => {
  const page = samplePage()
  const read = readSvg(renderSvgPage(page, packet([page]), fonts))
  const [first, ...others] = read.chains
  const off = {
    ...first!,
    curves: first!.curves.map(c => ({ ...c, at: (t: number) => ({ x: c.at(t).x + 0.01, y: c.at(t).y }) })),
  }
  expect(worstDeviation(page, { ...read, chains: [off, ...others] }, fonts).lines).toBeCloseTo(0.01, 6)
  expect(() => worstDeviation(page, { ...read, chains: others }, fonts)).toThrow('no more lines')
  expect(() => worstDeviation(page, { ...read, chains: [first!, ...read.chains] }, fonts)).toThrow('1 lines')
  expect(() => worstDeviation(page, { ...read, texts: read.texts.slice(1) }, fonts)).toThrow('does not say')
})
