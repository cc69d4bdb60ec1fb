import { readFile } from 'node:fs/promises'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { readModel } from '../../src/app/read-model.ts'
import { compensateKerf } from '../../src/drawing/compensate-kerf.ts'
import type { Drawing } from '../../src/drawing/drawing.ts'
import { boundsOfRegions, contourBounds, joinBounds, noBounds } from '../../src/geometry/measure/bounds.ts'
import { contourLength } from '../../src/geometry/measure/length.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import { point } from '../../src/geometry/shape/point.ts'
import { finishedOutline } from '../../src/model/finished-outline.ts'
import type { Part } from '../../src/model/part.ts'
import { toPart } from '../../src/model/pose.ts'
import { printable } from '../../src/number/tolerance.ts'
import { renderSvgDrawing } from '../../src/render/svg/render-drawing.ts'
import { renderSvgPage } from '../../src/render/svg/render-page.ts'
import { surroundings } from '../app/surroundings.ts'
import { openChromium } from './chromium.ts'

/** What Chromium says of an opened file; lengths in millimetres. */
type Seen = {
  /** The size in which it stands on the screen, by CSS: an inch is 96 of its pixels. */
  readonly width: number
  readonly height: number
  readonly texts: number
  readonly shapes: readonly SeenShape[]
}

type Size = { readonly width: number; readonly height: number }

type SeenShape = {
  readonly layer: string
  readonly group: string
  readonly name: string
  readonly width: number
  readonly height: number
  readonly length: number
  readonly stroke: number
}

let browser: Browser | undefined
let page: Page
const file = new URL('../../examples/cliff-railway/cliff-railway.yaml', import.meta.url)
const { model } = readModel({ text: await readFile(file), file: 'cliff-railway.yaml' })
const fonts = openFonts(surroundings.fonts)
const { packet, sheets } = layOutPacket(model!, { sheets: ['template'], copies: 'part' }, fonts, undefined)

beforeAll(async () => {
  browser = await openChromium()
  page = await browser.newPage()
})

afterAll(() => browser?.close())

/** Opens a file as it comes, as a document of its own and with no page around it. */
async function open(svg: string): Promise<Seen> {
  const address = 'http://paperjig.test/file.svg'
  await page.unroute('**/*')
  await page.route('**/*', route => route.fulfill({ contentType: 'image/svg+xml', body: svg }))
  await page.goto(address)
  return page.evaluate(() => {
    const root = document.documentElement as unknown as SVGSVGElement
    const mm = 25.4 / 96
    const shapes = [...document.querySelectorAll('[data-layer] :is(path, circle)')] as SVGGeometryElement[]
    return {
      width: root.width.baseVal.value * mm,
      height: root.height.baseVal.value * mm,
      texts: document.querySelectorAll('[role=img]').length,
      shapes: shapes
        .filter(shape => shape.closest('[role=img]') === null)
        .map(shape => {
          const { width, height } = shape.getBBox()
          return {
            layer: shape.closest('[data-layer]')!.getAttribute('data-layer')!,
            group: shape.parentElement!.id,
            name: shape.localName,
            width,
            height,
            length: shape.getTotalLength(),
            stroke: Number.parseFloat(getComputedStyle(shape).strokeWidth),
          }
        }),
    }
  })
}

/** The sheets that show a part as it is drawn, with the part. */
const templates: readonly (readonly [string, Drawing, Part])[] = sheets.flatMap(({ id, part, drawings }) =>
  id === `${part}-template` ? [[id, drawings[0], model!.parts.find(p => p.id === part)!] as const] : [],
)

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** The outline's box, the box of all, the length of what is cut, and the diameters bored, by the model alone. */
function ofModel({ drawn }: Part) {
  const outline = finishedOutline(drawn)
  const pockets = drawn.features.flatMap(({ face, shape }) =>
    face === 'front' && (shape.kind === 'pocket' || shape.kind === 'cut-out') ? [shape.region.outer] : [],
  )
  const contours = [...outline.flatMap(({ outer, holes }) => [outer, ...holes]), ...pockets]
  const rings = drawn.features.flatMap(({ face, shape }) => {
    const shows = face === 'front' || (face === 'back' && shape.kind === 'bore' && shape.depth === 'through')
    if (shape.kind === 'cut-out' && shape.entry !== undefined)
      return [circle(shape.entry.centre, shape.entry.diameter / 2)]
    if (!shows || shape.kind !== 'bore') return []
    const { x, y } = toPart(drawn.faces[face].pose, shape.centre)
    return [circle(point(x, y), shape.diameter.mm / 2)]
  })
  return {
    outline: sizeOf(boundsOfRegions(outline)),
    all: sizeOf([...contours, ...rings].map(contourBounds).reduce(joinBounds, noBounds)),
    cut: sum(contours.map(contourLength)),
    bores: rings.map(ring => sizeOf(contourBounds(ring)).width).sort((a, b) => a - b),
  }
}

function sizeOf({ left, right, bottom, top }: Bounds): Size {
  return { width: right - left, height: top - bottom }
}

/** The largest difference of each pair, sizes and numbers alike. */
function farthest(...pairs: readonly (readonly [number, number] | readonly [Size, Size])[]): number {
  return Math.max(
    ...pairs.flatMap(([a, b]) =>
      typeof a === 'number'
        ? [Math.abs(a - (b as number))]
        : [Math.abs(a.width - (b as Size).width), Math.abs(a.height - (b as Size).height)],
    ),
  )
}

function larger({ width, height }: Size, by: number): Size {
  return { width: width + by, height: height + by }
}

function layerOf({ shapes }: Seen, layer: string): readonly SeenShape[] {
  return shapes.filter(shape => shape.layer === layer)
}

function outlineOf({ shapes }: Seen, drawing: Drawing, part: Part): SeenShape {
  return shapes.find(({ group }) => group === `${drawing.id}.cut.${part.id}`)!
}

/** The diameters of all rings, in their order of size, each a true circle. */
function diametersOf(seen: Seen): readonly number[] {
  const rings = layerOf(seen, 'drill')
  expect(rings.every(({ name }) => name === 'circle')).toBe(true)
  return rings.map(({ width }) => width).sort((a, b) => a - b)
}

describe('Chromium opens the file of a part and measures', () => {
  test('each of the demo, in what follows', () => expect(templates.length).toBeGreaterThan(5))

  test.each(templates)(
    '%s: its size, outline, cuts and holes as the model has them',
    async (_, drawing, part) => {
      const wanted = ofModel(part)
      const seen = await open(renderSvgDrawing(drawing, 'en'))
      const diameters = diametersOf(seen)
      expect(diameters.length).toBe(wanted.bores.length)
      expect(
        farthest(
          [seen, larger(wanted.all, 2)],
          [outlineOf(seen, drawing, part), wanted.outline],
          ...diameters.map((diameter, i) => [diameter, wanted.bores[i]!] as const),
        ),
      ).toBeLessThan(printable)
      // it takes an arc up to a quarter turn as one cubic curve, which strays outward by up to 0.027 % of the radius
      // (of a whole circle it measures the length of a coarse polygon, so there its diameter is asked)
      const length = sum(
        layerOf(seen, 'cut').map(shape => (shape.name === 'circle' ? Math.PI * shape.width : shape.length)),
      )
      expect(Math.abs(length / wanted.cut - 1)).toBeLessThan(0.00027)
      expect(seen.texts).toBe(0)
      expect(new Set(seen.shapes.map(({ stroke }) => stroke))).toEqual(new Set([0.0254]))
    },
  )

  test.each(templates)(
    '%s with a kerf of 0.3 mm: larger by it, its holes smaller',
    async (_, drawing, part) => {
      const wanted = ofModel(part)
      const compensated = compensateKerf(drawing, 0.3)
      if (!compensated.ok) throw new Error(compensated.fault.reason)
      expect(compensated.value.tooNarrow).toEqual([])
      const seen = await open(renderSvgDrawing(compensated.value.drawing, 'en'))
      expect(
        farthest(
          [outlineOf(seen, drawing, part), larger(wanted.outline, 0.3)],
          ...diametersOf(seen).map((diameter, i) => [diameter, wanted.bores[i]! - 0.3] as const),
        ),
      ).toBeLessThan(printable)
    },
  )
})

describe('Chromium opens a page', () => {
  test('as large as its paper, with outlines as large as the parts', async () => {
    let measured = 0
    for (const printed of packet.pages) {
      const seen = await open(renderSvgPage(printed, packet, fonts))
      expect(farthest([seen, printed.paper])).toBeLessThan(printable)
      expect(seen.texts).toBeGreaterThan(5)
      for (const { drawing, matrix } of printed.placed) {
        const part = templates.find(([id]) => id === drawing.id)?.[2]
        if (part === undefined) continue
        const { width, height } = ofModel(part).outline
        // a quarter turn changes length for width
        const wanted = matrix.a === 0 ? { width: height, height: width } : { width, height }
        expect(farthest([outlineOf(seen, drawing, part), wanted])).toBeLessThan(printable)
        measured++
      }
    }
    expect(measured).toBeGreaterThan(5)
  })

  test('without text and in hairlines where that is wanted', async () => {
    const [first] = packet.pages
    const seen = await open(renderSvgPage(first!, packet, fonts, { text: false, lines: 'hairline' }))
    expect(seen.texts).toBe(0)
    expect(new Set(layerOf(seen, 'cut').map(({ stroke }) => stroke))).toEqual(new Set([0.0254]))
  })
})
