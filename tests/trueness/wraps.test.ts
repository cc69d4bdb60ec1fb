import { expect, test } from 'vitest'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { readModel } from '../../src/app/read-model.ts'
import { pointInRegion } from '../../src/geometry/measure/inside.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import type { Part } from '../../src/model/part.ts'
import { type Point3, toPart } from '../../src/model/pose.ts'
import { printable } from '../../src/number/tolerance.ts'
import { blockOf } from '../../src/sheet/wrap/block.ts'
import { netOf, onPaper, type Panel, panelsInColumns, panelsOf } from '../../src/sheet/wrap/net.ts'
import { onFaces } from '../../src/sheet/wrap/on-faces.ts'
import { surroundings } from '../app/surroundings.ts'
import { boreInPart } from '../model/model-of.ts'
import { moved, type ReadBack } from '../readback/read-back.ts'
import { readPdf } from '../readback/read-pdf.ts'
import { readSvg } from '../readback/read-svg.ts'
import { foldedUp } from '../sheet/wrap/fold-up.ts'
import { areaOf, inverse, sixOf, within } from './on-page.ts'

const cap = `paperjig: 1
title: Signal mast
units: mm
parts:
  cap:
    size: 76 x 50 x 32
    wrap: net
    cuts:
      - { hole: a, on: left, at: { bottom: 14, front: center }, diameter: 6, depth: 20 }
      - { row: b, on: top, at: { left: 12, front: 9 }, toward: right, spacing: 25, count: 3, diameter: 4, depth: 12 }
      - { hole: c, at: { left: 40, bottom: 20 }, diameter: 9, depth: 11 }
      - { hole: d, on: back, at: { right: 12, top: 12 }, diameter: 3, depth: 6 }
`

/** The middles of all rings of the wrap as it is read back from a page, where they lie on the paper of the drawing. */
async function printedCentres(text: string) {
  const input = { text, file: 'plan.yaml' }
  const { model } = readModel(input)
  const choices = { paper: 'a4', sheets: ['wrap'] }
  const pages = [...layOutPacket(model!, choices, openFonts(surroundings.fonts), undefined).packet.pages]
  const { pdf } = await printPdf(input, choices, surroundings)
  const svg = printSvg(input, choices, surroundings).files.find(({ name }) => name.startsWith('page-'))!
  const reads = { PDF: (await readPdf(pdf!))[0]!, SVG: readSvg(new TextDecoder().decode(svg.bytes)) }
  const placed = pages[0]!.placed.find(one => one.drawing.id === 'cap-wrap')!
  const back = inverse(sixOf(placed))
  const centresIn = (read: ReadBack): readonly Point[] =>
    within(areaOf(placed), read)
      .chains.filter(
        ({ paint, closed, curves }) => paint === 'stroke' && closed && curves.every(c => c.kind === 'curve'),
      )
      .map(({ curves }) => {
        const points = curves.flatMap(({ at }) => [0, 0.25, 0.5, 0.75].map(t => moved(back, at(t))))
        const [xs, ys] = [points.map(p => p.x), points.map(p => p.y)]
        return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 }
      })
  const part = model!.parts[0]!
  return { part, block: blockOf(part, part.drawn), centres: [centresIn(reads.PDF), centresIn(reads.SVG)] }
}

function expectEveryCentre(part: Part, found: readonly Point3[]): void {
  expect(found).toHaveLength(part.drawn.features.length)
  for (const feature of part.drawn.features) {
    const { x, y, z } = boreInPart(part.drawn, feature)
    const off = Math.min(...found.map(p => Math.hypot(p.x - x, p.y - y, p.z - z)))
    expect(off, feature.id).toBeLessThan(printable)
  }
}

function panelUnder(panels: readonly Panel[], middle: Point): Panel | undefined {
  return panels.find(one => pointInRegion(onPaper(one), middle) === 'inside')
}

test('a net as it is printed, read back from PDF and SVG and folded up, has every centre within 0.005 mm of the model', async () => {
  const { part, block, centres } = await printedCentres(cap)
  const panels = netOf(block, [...onFaces(part.drawn, block).keys()], true)
  for (const read of centres) {
    const folded = read.map(at => foldedUp(panels, panelUnder(panels, at)!, at, part.thickness.mm))
    expectEveryCentre(part, folded)
  }
})

test('panels as they are printed, read back from PDF and SVG and laid on their faces, have every centre within 0.005 mm', async () => {
  const { part, block, centres } = await printedCentres(cap.replace('wrap: net', 'wrap: panels'))
  const faces = [...onFaces(part.drawn, block).keys()]
  const layouts = [panelsOf(block, faces), panelsInColumns(block, faces)]
  for (const read of centres) {
    // the page has room for one of the two
    const panels = layouts.find(layout => read.every(at => panelUnder(layout, at) !== undefined))!
    const laid = read.map(at => {
      const { face, toPaper } = panelUnder(panels, at)!
      return toPart(face.pose, moved(inverse(sixOf({ matrix: toPaper })), at))
    })
    expectEveryCentre(part, laid)
  }
})
