import { getDocument, OPS, type PDFDocumentProxy, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { Point } from '../../src/geometry/shape/point.ts'
import {
  after,
  cubic,
  magnification,
  moved,
  movedCurve,
  type ReadBack,
  type ReadChain,
  type ReadCurve,
  type ReadText,
  type Six,
  straight,
  unmoved,
} from './read-back.ts'

const mmPerPoint = 25.4 / 72

/** Every page of a PDF, read with pdf.js; it holds coordinates in 32 bits, which is 0.00003 mm at a metre. */
export async function readPdf(bytes: Uint8Array): Promise<readonly ReadBack[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 })
  const document = await task.promise
  const pages: ReadBack[] = []
  const layers = await document.getOptionalContentConfig()
  for (let n = 1; n <= document.numPages; n++) pages.push(await readPage(await document.getPage(n), layers))
  await task.destroy()
  return pages
}

type Layers = Awaited<ReturnType<PDFDocumentProxy['getOptionalContentConfig']>>

type State = {
  ctm: Six
  width: number
  dashes: readonly number[]
  fontSize: number
}

type PdfGlyph = { readonly unicode: string; readonly width: number }

async function readPage(page: PDFPageProxy, layers: Layers): Promise<ReadBack> {
  const [left, bottom, right, top] = page.view as [number, number, number, number]
  const toMm: Six = [mmPerPoint, 0, 0, mmPerPoint, -left * mmPerPoint, -bottom * mmPerPoint]
  const { fnArray, argsArray } = await page.getOperatorList()
  /** Of each marked content around what is written the layer that it is, if it is one. */
  const around: (string | undefined)[] = []
  const chains: ReadChain[] = []
  const texts: ReadText[] = []
  const saved: State[] = []
  let state: State = { ctm: toMm, width: 1, dashes: [], fontSize: 0 }
  let textMatrix = unmoved
  let along = 0
  let text = ''

  fnArray.forEach((operator: number, i: number) => {
    const args = argsArray[i] as readonly unknown[]
    switch (operator) {
      case OPS.save:
        saved.push(state)
        state = { ...state }
        break
      case OPS.restore:
        state = saved.pop()!
        break
      case OPS.transform:
        state.ctm = after(state.ctm, args as unknown as Six)
        break
      case OPS.setLineWidth:
        state.width = args[0] as number
        break
      case OPS.setDash:
        state.dashes = args[0] as number[]
        break
      case OPS.beginMarkedContentProps: {
        const [tag, what] = args as readonly [string, unknown]
        around.push(tag === 'OC' ? layers.getGroup((what as { id: string }).id)!.name! : undefined)
        break
      }
      case OPS.endMarkedContent:
        around.pop()
        break
      case OPS.setLineJoin:
      case OPS.dependency:
        break
      case OPS.constructPath: {
        const [paint, [data]] = args as readonly [number, readonly [Float32Array | null]]
        const stroke = paint === OPS.stroke || paint === OPS.closeStroke
        if (!stroke && paint !== OPS.fill && paint !== OPS.eoFill) throw new Error(`paints with ${paint}`)
        const scale = magnification(state.ctm)
        for (const { curves, closed } of pathChains(data ?? new Float32Array())) {
          chains.push({
            paint: stroke ? 'stroke' : 'fill',
            curves: curves.map(c => movedCurve(state.ctm, c)),
            closed,
            width: stroke ? state.width * scale : 0,
            dashes: stroke ? state.dashes.map(d => d * scale) : [],
            groups: around.filter(layer => layer !== undefined),
          })
        }
        break
      }
      case OPS.beginText:
        textMatrix = unmoved
        along = 0
        text = ''
        break
      case OPS.setTextMatrix:
        textMatrix = Array.from(args[0] as ArrayLike<number>) as unknown as Six
        along = 0
        break
      case OPS.setFont:
        state.fontSize = args[1] as number
        break
      case OPS.showText:
        for (const glyph of args[0] as readonly (PdfGlyph | number)[]) {
          if (typeof glyph === 'number') {
            along -= (glyph / 1000) * state.fontSize
            continue
          }
          text += glyph.unicode
          along += (glyph.width / 1000) * state.fontSize
        }
        break
      case OPS.endText: {
        const m = after(state.ctm, textMatrix)
        const place = {
          kind: 'base-line' as const,
          start: moved(m, { x: 0, y: 0 }),
          end: moved(m, { x: along, y: 0 }),
        }
        texts.push({ text, place, groups: around.filter(layer => layer !== undefined) })
        break
      }
      default:
        throw new Error(`a page of ours has no operator ${operatorName(operator)}`)
    }
  })
  if (around.length > 0) throw new Error('a marked content does not end')
  return { width: (right - left) * mmPerPoint, height: (top - bottom) * mmPerPoint, chains, texts }
}

function operatorName(operator: number): string {
  return Object.entries(OPS).find(([, code]) => code === operator)?.[0] ?? String(operator)
}

/** How pdf.js packs a path: a code and its coordinates, again and again. */
const drawing = { move: 0, line: 1, cubic: 2, quadratic: 3, close: 4 }

function pathChains(data: Float32Array): readonly { curves: ReadCurve[]; closed: boolean }[] {
  const chains: { curves: ReadCurve[]; closed: boolean }[] = []
  let start: Point = { x: 0, y: 0 }
  let at = start
  let i = 0
  const next = (): Point => ({ x: data[i++]!, y: data[i++]! })
  while (i < data.length) {
    const code = data[i++]
    const chain = chains.at(-1)
    if (code === drawing.move) {
      start = next()
      at = start
      chains.push({ curves: [], closed: false })
    } else if (code === drawing.line) {
      const to = next()
      chain!.curves.push(straight(at, to))
      at = to
    } else if (code === drawing.cubic) {
      const [control1, control2, to] = [next(), next(), next()]
      chain!.curves.push(cubic(at, control1, control2, to))
      at = to
    } else if (code === drawing.close) {
      if (at.x !== start.x || at.y !== start.y) chain!.curves.push(straight(at, start))
      chain!.closed = true
      at = start
    } else {
      throw new Error(`unknown piece of a path: ${code}`)
    }
  }
  return chains
}
