import { PDFiumLibrary } from '@hyzyla/pdfium'
import { Resvg } from '@resvg/resvg-js'
import pixelmatch from 'pixelmatch'
import { PNG } from 'pngjs'

/** A picture in grey, one byte a pixel, row by row from the top; 255 is white. */
export type Picture = { readonly width: number; readonly height: number; readonly grey: Uint8Array }

/** The resolution of pictures to compare: a line of 0.18 mm is most of a pixel wide. */
export const dotsPerInch = 100

/** Pages of a PDF as PDFium paints them; it has no fonts but those in the file. */
export async function paintPdf(bytes: Uint8Array, dpi = dotsPerInch): Promise<readonly Picture[]> {
  const library = await PDFiumLibrary.init()
  const document = await library.loadDocument(bytes)
  const pictures: Picture[] = []
  for (let i = 0; i < document.getPageCount(); i++) {
    // PDFium's own size, so that both engines are told the same number of pixels
    const { originalWidth, originalHeight } = document.getPage(i).getOriginalSize()
    const painted = await document.getPage(i).render({
      width: pixels((originalWidth * 25.4) / 72, dpi),
      height: pixels((originalHeight * 25.4) / 72, dpi),
      colorSpace: 'Gray',
      render: 'bitmap',
    })
    pictures.push({ width: painted.width, height: painted.height, grey: painted.data })
  }
  document.destroy()
  library.destroy()
  return pictures
}

/** An SVG file as resvg paints it, without any fonts of the machine. */
export function paintSvg(svg: string, dpi = dotsPerInch): Picture {
  const width = Number(/ width="([\d.]+)mm"/.exec(svg)?.[1])
  const painted = new Resvg(svg, {
    background: '#fff',
    fitTo: { mode: 'width', value: pixels(width, dpi) },
    font: { loadSystemFonts: false },
  }).render()
  const rgba = painted.pixels
  const grey = Uint8Array.from({ length: rgba.length / 4 }, (_, i) => rgba[4 * i]!)
  return { width: painted.width, height: painted.height, grey }
}

function pixels(mm: number, dpi: number): number {
  return Math.round((mm / 25.4) * dpi)
}

/** The pixels in which two pictures differ, and a picture of them: black where they do. */
export function difference(
  a: Picture,
  b: Picture,
  threshold = 0.1,
): { readonly pixels: number; readonly picture: Picture } {
  if (a.width !== b.width || a.height !== b.height) {
    throw new Error(`the pictures have ${a.width} x ${a.height} and ${b.width} x ${b.height} pixels`)
  }
  const mask = new Uint8Array(4 * a.width * a.height)
  const count = pixelmatch(rgba(a), rgba(b), mask, a.width, a.height, { threshold, diffMask: true })
  const grey = Uint8Array.from({ length: a.grey.length }, (_, i) => (mask[4 * i + 3] === 0 ? 255 : 0))
  return { pixels: count, picture: { width: a.width, height: a.height, grey } }
}

function rgba({ grey }: Picture): Uint8Array {
  const out = new Uint8Array(4 * grey.length)
  grey.forEach((value, i) => {
    out.fill(value, 4 * i, 4 * i + 3)
    out[4 * i + 3] = 255
  })
  return out
}

export function readPng(bytes: Uint8Array): Picture {
  const { width, height, data } = PNG.sync.read(Buffer.from(bytes))
  const grey = Uint8Array.from({ length: width * height }, (_, i) => data[4 * i]!)
  return { width, height, grey }
}

export function writePng({ width, height, grey }: Picture): Uint8Array {
  const png = new PNG({ width, height })
  png.data = Buffer.from(rgba({ width, height, grey }))
  return PNG.sync.write(png, { colorType: 0 })
}

/**
 * How many clearly dark pixels of either picture have no ink of the other within `reach` pixels. Engines differ
 * in how they grey the edge of a line; where it is they have to agree.
 */
export function strayInk(a: Picture, b: Picture, reach = 1): number {
  return strayed(a, b, reach) + strayed(b, a, reach)
}

const dark = 96
const blank = 224

function strayed(from: Picture, to: Picture, reach: number): number {
  if (from.width !== to.width || from.height !== to.height) return Infinity
  const { width, height } = from
  const inked = (x: number, y: number): boolean => {
    for (let v = Math.max(0, y - reach); v <= Math.min(height - 1, y + reach); v++) {
      for (let u = Math.max(0, x - reach); u <= Math.min(width - 1, x + reach); u++) {
        if (to.grey[v * width + u]! < blank) return true
      }
    }
    return false
  }
  let count = 0
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      if (from.grey[y * width + x]! < dark && !inked(x, y)) count++
    }
  }
  return count
}
