import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Drawing } from '../../src/drawing/drawing.ts'
import type { Layer } from '../../src/drawing/mark.ts'
import type { Page } from '../../src/drawing/page.ts'
import { compose, identity, quarterTurns, shift } from '../../src/geometry/shape/matrix.ts'
import { point } from '../../src/geometry/shape/point.ts'
import { renderPdf } from '../../src/render/pdf/render-pdf.ts'
import { readPdf } from '../readback/read-pdf.ts'
import { bundledFonts } from '../text/bundled-font.ts'
import { hostileLabels, hostilePage } from './hostile-page.ts'
import { handTo } from './other-programs.ts'
import { bracket, chain, packet, path, text } from './sample-page.ts'

const fonts = bundledFonts()

function drawing(part: string | undefined, sheet: string, marks = bracket().marks, pieces?: string): Drawing {
  const caption = {
    plan: 'Pier',
    sheet,
    ...(part === undefined ? {} : { part }),
    ...(pieces ? { pieces } : {}),
  }
  return { ...bracket(), caption, marks }
}

function page(number: number, drawings: readonly Drawing[], more: Partial<Page> = {}): Page {
  return {
    paper: { name: 'a4', width: 210, height: 297 },
    number,
    placed: drawings.map((drawing, i) => ({ drawing, matrix: shift(20, 200 - 60 * i) })),
    furniture: [
      { ...text([`page ${number}`], point(20, 280), 2.5), layer: 'paper' },
      path('paper', 'thin', chain(point(20, 278), point(190, 278))),
    ],
    correction: identity,
    ...more,
  }
}

const keyed = [
  ...bracket().marks,
  text(['bore ⌀ ', { whole: '2', over: '1', under: '2' }], point(6, -8), 2.5),
  text(['A'], point(0, -8), 3.5),
  text(['B'], point(0, -14), 3.5),
]

const pages = [
  page(1, [drawing(undefined, 'list of parts')], { label: 'cover', bookmarks: [['Cover']] }),
  page(2, [drawing('Bracket', 'template', keyed, 'piece 1 of 2'), drawing('Rail', 'template')]),
  page(3, [{ ...drawing('Bracket', 'drill strip'), description: 'two holes 40 mm apart' }]),
  page(4, [drawing('Bracket', 'drill strip')]),
]

let bytes: Uint8Array
let read: PDFDocumentProxy

beforeAll(async () => {
  bytes = await renderPdf(packet(pages), fonts, '0')
  read = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
})

afterAll(() => read?.destroy())

test('the file is sound, says qpdf, with hostile labels too', async () => {
  const hostile = hostileLabels.map(([written], i) =>
    page(i + 2, [drawing(written, written)], { label: written }),
  )
  for (const made of [bytes, await renderPdf(packet([hostilePage(), ...hostile]), fonts, '0')]) {
    const checked = handTo('qpdf', ['--check'], made)
    if (checked !== undefined)
      expect(checked).toEqual({ status: 0, output: expect.stringContaining('No syntax') })
    expect(Buffer.from(made).toString('latin1')).not.toContain('/JavaScript')
  }
})

test('the print dialogue is asked for true size, for the tray with the paper, and for one side', async () => {
  expect(await read.getViewerPreferences()).toMatchObject({
    PrintScaling: 'None',
    PickTrayByPDFSize: true,
    Duplex: 'Simplex',
  })
})

describe('the list of contents', () => {
  test('has each part once, with its sheets under it, and what a page enters itself', async () => {
    const outline = await read.getOutline()
    const titles = outline.map(({ title, items }) => [title, ...items.map(i => i.title)])
    expect(titles).toEqual([
      ['Cover'],
      ['Bracket', 'template, piece 1 of 2', 'drill strip'],
      ['Rail', 'template'],
    ])
  })

  test('leads to the first page of each', async () => {
    const leadsTo = async (dest: unknown): Promise<number> =>
      (await read.getPageIndex((dest as [{ num: number; gen: number }])[0])) + 1
    const [cover, bracket, rail] = await read.getOutline()
    const all = [cover!, bracket!, ...bracket!.items, rail!]
    expect(await Promise.all(all.map(({ dest }) => leadsTo(dest)))).toEqual([1, 2, 2, 3, 2])
  })

  test('is left out where nothing leads anywhere', async () => {
    const empty = await renderPdf(packet([page(1, [])]), fonts, '0')
    const task = getDocument({ data: empty, verbosity: 0 })
    expect(await (await task.promise).getOutline()).toBeNull()
    await task.destroy()
  })
})

test('a viewer calls the pages what they say of themselves', async () => {
  expect(await read.getPageLabels()).toEqual(['cover', '2', '3', '4'])
  const some = await renderPdf(packet([page(7, []), page(8, []), page(3, [])]), fonts, '0')
  const task = getDocument({ data: some, verbosity: 0 })
  expect(await (await task.promise).getPageLabels()).toEqual(['7', '8', '3'])
  await task.destroy()
})

describe('the layers', () => {
  test('are listed from the paper up, and all of them show', async () => {
    const layers = await read.getOptionalContentConfig()
    const order = layers.getOrder() as string[]
    expect(order.map(id => layers.getGroup(id)!.name)).toEqual(['paper', 'cut', 'drill', 'text'])
    expect(order.every(id => layers.isVisible({ type: 'OCG', id }))).toBe(true)
  })

  test('hold every mark, each in its own', async () => {
    const pagesRead = await readPdf(bytes)
    for (const [i, { placed, furniture }] of pages.entries()) {
      const marks = [...placed.flatMap(p => p.drawing.marks), ...furniture]
      const texts = (layer: Layer) => marks.filter(m => m.kind === 'text' && m.layer === layer).length
      const lines = (layer: Layer) =>
        marks.reduce((sum, m) => {
          if (m.kind === 'text' || m.layer !== layer) return sum
          return (
            sum +
            (m.kind === 'path' ? m.contours.length : m.regions.reduce((n, r) => n + 1 + r.holes.length, 0))
          )
        }, 0)
      for (const layer of ['paper', 'cut', 'drill', 'dimension', 'text'] as const) {
        const inLayer = (one: { groups: readonly string[] }) => one.groups.join() === layer
        expect(pagesRead[i]!.texts.filter(inLayer).length).toBe(texts(layer))
        expect(pagesRead[i]!.chains.filter(inLayer).length).toBe(lines(layer))
      }
    }
  })
})

type Node = {
  readonly role?: string
  readonly alt?: string
  readonly bbox?: number[]
  readonly id?: string
  readonly children?: Node[]
}

async function sectionOf(number: number): Promise<readonly Node[]> {
  const tree = (await (await read.getPage(number)).getStructTree()) as Node
  expect(tree.role).toBe('Root')
  const [document, ...others] = tree.children!
  expect([document!.role, others]).toEqual(['Document', []])
  const [section, ...more] = document!.children!
  expect([section!.role, more]).toEqual(['Sect', []])
  return section!.children!
}

/** What is read aloud on a page, element by element: the words for a picture, the text of a line. */
async function heard(number: number): Promise<readonly string[]> {
  const { items } = await (await read.getPage(number)).getTextContent({ includeMarkedContent: true })
  const words = new Map<string, string>()
  const around: (string | undefined)[] = []
  for (const item of items) {
    if (!('str' in item)) {
      if (item.type === 'endMarkedContent') around.pop()
      else around.push(item.id)
      continue
    }
    const id = around.findLast(one => one !== undefined)
    if (id !== undefined) words.set(id, (words.get(id) ?? '') + item.str)
  }
  return (await sectionOf(number)).map(({ role, alt, children }) =>
    role === 'Figure' ? `(${alt})` : children!.map(({ id }) => words.get(id!) ?? '').join(),
  )
}

describe('read aloud', () => {
  test('a page is its drawings one after another: the picture in words, then its lines of text', async () => {
    const own = ['A', '2 1/2 × 7/16']
    expect(await heard(2)).toEqual([
      '(Bracket: template, piece 1 of 2)',
      ...own,
      'A bore ⌀ 2 1/2',
      'B',
      '(Rail: template)',
      ...own,
    ])
    expect((await heard(1))[0]).toBe('(Pier: list of parts)')
    expect((await heard(3))[0]).toBe('(Bracket: drill strip; two holes 40 mm apart)')
  })

  test('what every page carries for the sake of the paper is passed over', async () => {
    expect((await heard(2)).join()).not.toContain('page 2')
    expect((await readPdf(bytes))[1]!.texts.map(t => t.text)).toContain('page 2')
  })

  test('a picture has its box where it stands on the page', async () => {
    const boxOf = async (one: Page): Promise<readonly number[]> => {
      const task = getDocument({ data: await renderPdf(packet([one]), fonts, '0'), verbosity: 0 })
      const tree = (await (await (await task.promise).getPage(1)).getStructTree()) as Node
      await task.destroy()
      return tree.children![0]!.children![0]!.children![0]!.bbox!.map(v => (v * 25.4) / 72)
    }
    const close = (box: readonly number[], wanted: readonly number[]): void =>
      box.forEach((side, i) => {
        expect(side).toBeCloseTo(wanted[i]!, 4)
      })
    // the bracket's bounds are 90 x 45 mm from its corner
    close(await boxOf(page(1, [bracket()])), [20, 200, 110, 245])
    const turned = [{ drawing: bracket(), matrix: compose(quarterTurns(1), shift(100, 50)) }]
    close(await boxOf(page(1, [], { placed: turned })), [55, 50, 100, 140])
    close(
      await boxOf(page(1, [bracket()], { correction: { ...identity, a: 1.02 } })),
      [20.4, 200, 112.2, 245],
    )
  })

  test('words that hide something are heard as their codes', async () => {
    const made = await renderPdf(packet([page(1, [drawing('a\u202Eb', 'c\u0000d')])]), fonts, '0')
    const task = getDocument({ data: made, verbosity: 0 })
    const tree = (await (await (await task.promise).getPage(1)).getStructTree()) as Node
    await task.destroy()
    expect(tree.children![0]!.children![0]!.children![0]!.alt).toBe('a[U+202E]b: c[U+0000]d')
  })
})
