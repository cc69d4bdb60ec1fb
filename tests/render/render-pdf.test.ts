import { deflateSync } from 'node:zlib'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { SaxesParser } from 'saxes'
import { describe, expect, test } from 'vitest'
import type { Page } from '../../src/drawing/page.ts'
import { identity } from '../../src/geometry/shape/matrix.ts'
import { point } from '../../src/geometry/shape/point.ts'
import { longestPdfSide, renderPdf } from '../../src/render/pdf/render-pdf.ts'
import { readPdf } from '../readback/read-pdf.ts'
import { bundledFonts, fontFiles } from '../text/bundled-font.ts'
import { hostileLabels, hostilePage } from './hostile-page.ts'
import { handTo } from './other-programs.ts'
import { chain, packet, path, samplePage, text } from './sample-page.ts'

const fonts = bundledFonts()

function sheet(furniture: Page['furniture'], width = 210, height = 297): Page {
  return { paper: { name: 'custom', width, height }, number: 1, placed: [], furniture, correction: identity }
}

function source(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('latin1')
}

async function copied(bytes: Uint8Array): Promise<string> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 })
  const page = await (await task.promise).getPage(1)
  const { items } = await page.getTextContent()
  await task.destroy()
  return items.map(i => ('str' in i ? i.str + (i.hasEOL ? '\n' : '') : '')).join('')
}

describe('the file', () => {
  test('asks for no scaling, shows its title, and says language, maker and the date it was given', async () => {
    const bytes = source(await renderPdf(packet([samplePage()], 'Cliff railway'), fonts, '1.2.3'))
    expect(bytes).toMatch(/^%PDF-1\.7\n/)
    expect(bytes).toContain('/PrintScaling /None')
    expect(bytes).toContain('/DisplayDocTitle true')
    expect(bytes).toContain('/Lang (en)')
    expect(bytes).toContain('(Cliff railway)')
    expect(bytes).toContain('(Paperjig 1.2.3)')
    expect(bytes.match(/D:\d+/g)).toEqual(['D:20200203040506'])
  })

  test('is sound, says qpdf', async () => {
    const bytes = await renderPdf(packet([samplePage(1), hostilePage(), samplePage(2)]), fonts, '0')
    const checked = handTo('qpdf', ['--check'], bytes)
    if (checked !== undefined)
      expect(checked).toEqual({ status: 0, output: expect.stringContaining('No syntax') })
    expect((await readPdf(bytes)).length).toBe(3)
  })

  test('has the same bytes for the same packet, in every time zone', async () => {
    const zone = process.env.TZ
    const [here, again] = [await make(), await make()]
    process.env.TZ = 'Pacific/Auckland'
    const there = await make()
    if (zone === undefined) delete process.env.TZ
    else process.env.TZ = zone
    expect(source(again)).toBe(source(here))
    expect(source(there)).toBe(source(here))

    function make(): Promise<Uint8Array> {
      return renderPdf(packet([samplePage(), hostilePage()]), bundledFonts(), '0')
    }
  })

  test('has the same bytes when its pages are packed beside the work, however long that takes', async () => {
    const pages = () => packet([samplePage(1), hostilePage(), sheet([]), samplePage(2)])
    let packed = 0
    const pack = async (bytes: Uint8Array): Promise<Uint8Array> => {
      await new Promise(resolve => setTimeout(resolve, 5 * (packed++ % 2)))
      return deflateSync(bytes)
    }
    const beside = await renderPdf(pages(), fonts, '0', pack)
    expect(source(beside)).toBe(source(await renderPdf(pages(), fonts, '0')))
    expect(packed).toBe(4)
  })

  test('is given up with what went wrong while a page was packed', async () => {
    const pack = (): Promise<Uint8Array> => Promise.reject(new Error('no room to pack'))
    const wanted = packet([samplePage(1), samplePage(2)])
    await expect(renderPdf(wanted, fonts, '0', pack)).rejects.toThrow('no room to pack')
  })

  test('has another id when its date is another', async () => {
    const id = (bytes: Uint8Array): string | undefined => /\/ID \[<(\w+)>/.exec(source(bytes))?.[1]
    const one = packet([samplePage()])
    const other = { ...one, date: new Date('2021-01-01T00:00:00Z') }
    expect(id(await renderPdf(one, fonts, '0'))).toMatch(/^\w{32}$/)
    expect(id(await renderPdf(one, fonts, '0'))).not.toBe(id(await renderPdf(other, fonts, '0')))
  })

  test('embeds a part of each font file that is used', async () => {
    const latin = await renderPdf(packet([sheet([text(['Side frame'], point(10, 10), 3.5)])]), fonts, '0')
    expect(source(latin).match(/\/FontFile2 /g)).toHaveLength(1)
    expect(source(latin)).toMatch(/\/FontName \/[A-Z]{6}\+IBMPlexSans/)
    expect(latin.length).toBeLessThan(fontFiles()[0]!.length / 2)
    const polish = await renderPdf(packet([sheet([text(['wał ⌀'], point(10, 10), 3.5)])]), fonts, '0')
    expect(source(polish).match(/\/FontFile2 /g)).toHaveLength(2)
  })

  test('takes its pages one at a time', async () => {
    const numbers: number[] = []
    function* pages(): Generator<Page> {
      for (let n = 1; n <= 3; n++) {
        numbers.push(n)
        yield samplePage(n)
      }
    }
    const read = await readPdf(await renderPdf(packet(pages()), fonts, '0'))
    expect(numbers).toEqual([1, 2, 3])
    expect(read.map(page => page.texts.at(-1)?.text)).toEqual(['page 1', 'page 2', 'page 3'])
  })

  test('has pages of exactly their size, upright and lying', async () => {
    const sizes = [
      [215.9, 279.4],
      [420, 297],
      [1100, 80.5],
      [longestPdfSide, 100],
    ] as const
    const read = await readPdf(await renderPdf(packet(sizes.map(([w, h]) => sheet([], w, h))), fonts, '0'))
    read.forEach(({ width, height }, i) => {
      expect(width).toBeCloseTo(sizes[i]![0], 5)
      expect(height).toBeCloseTo(sizes[i]![1], 5)
    })
  })

  test.each([
    ['larger than PDF allows', sheet([], longestPdfSide + 1, 100)],
    ['without a size', sheet([], 0, 100)],
    ['with a number that is none', sheet([path('cut', 'cut', chain(point(0, 0), point(Number.NaN, 1)))])],
    ['with an endless line', sheet([path('cut', 'cut', chain(point(0, 0), point(Infinity, 1)))])],
  ])('is not made of a page %s', async (_, page) => {
    await expect(renderPdf(packet([page]), fonts, '0')).rejects.toThrow(RangeError)
  })
})

describe('text that is copied', () => {
  const words = [
    'Bore ⌀ ',
    { over: '5', under: '64' },
    ', ',
    { whole: '2', over: '1', under: '2' },
    '" ≈ 63.5 mm',
  ] as const
  const line = 'Bore ⌀ 5/64, 2 1/2" ≈ 63.5 mm'

  test.each([1.8, 2.5, 3.5, 7])('at %d mm has its fractions as they are spoken', async height => {
    const bytes = await renderPdf(packet([sheet([text(words, point(20, 100), height)])]), fonts, '0')
    expect(await copied(bytes)).toBe(line)
    for (const order of [[], ['-raw'], ['-layout']]) {
      const poppler = handTo('pdftotext', order, bytes, ['-'])
      if (poppler !== undefined) expect(poppler.output.trim()).toBe(line)
    }
  })

  test('reads the same when it runs along the edge', async () => {
    const bytes = await renderPdf(
      packet([sheet([text(words, point(20, 100), 3.5, { angle: Math.PI / 2 })])]),
      fonts,
      '0',
    )
    expect(await copied(bytes)).toBe(line)
  })

  test('has more fractions than one drawn font has codes', async () => {
    const all = Array.from({ length: 300 }, (_, i) => String(i + 1))
    const furniture = all.map((over, i) =>
      text([{ over, under: '301' }], point(10 + 20 * (i % 10), 5 + 9 * Math.floor(i / 10)), 2.5),
    )
    const [read] = await readPdf(await renderPdf(packet([sheet(furniture)]), fonts, '0'))
    expect(read!.texts.map(t => t.text)).toEqual(all.map(over => `${over}/301`))
  })

  test('is what hostile labels show: themselves, or their codes', async () => {
    const bytes = await renderPdf(packet([hostilePage()]), fonts, '0')
    const [read] = await readPdf(bytes)
    const shown = read!.texts.map(t => t.text)
    for (const [, label] of hostileLabels) expect(shown).toContain(label)
    expect(source(bytes)).not.toContain('/JavaScript')
    const checked = handTo('qpdf', ['--check'], bytes)
    if (checked !== undefined) expect(checked.status).toBe(0)
  })

  test('stays text in the metadata, which are XML', async () => {
    const title = hostileLabels.map(([written]) => written).join(' ')
    const bytes = source(await renderPdf(packet([samplePage()], title), fonts, '0'))
    const xml = /<x:xmpmeta[\s\S]*<\/x:xmpmeta>/.exec(bytes)![0]
    const parser = new SaxesParser({ xmlns: true })
    let text = ''
    parser.on('text', piece => {
      text += piece
    })
    parser.on('error', error => {
      throw error
    })
    parser.write(Buffer.from(xml, 'latin1').toString('utf8')).close()
    expect(text).toContain('</title></svg><script>alert(1)</script> &lt;b&gt; & "quoted"')
    expect(text).toContain('a[U+0000]b[U+0007]c')
  })

  test('is the title too, with codes for what would hide in it', async () => {
    const bytes = await renderPdf(packet([samplePage()], 'Über (\\) \u202E 中'), fonts, '0')
    const task = getDocument({ data: bytes, verbosity: 0 })
    const { info } = await (await task.promise).getMetadata()
    await task.destroy()
    expect(info).toMatchObject({ Title: 'Über (\\) [U+202E] 中', Language: 'en' })
  })
})
