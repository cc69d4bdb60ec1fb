import { expect, test } from 'vitest'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { printPdf } from '../../src/app/print-pdf.ts'
import { readModel } from '../../src/app/read-model.ts'
import { pointInRegion } from '../../src/geometry/measure/inside.ts'
import { printable } from '../../src/number/tolerance.ts'
import { blockOf } from '../../src/sheet/wrap/block.ts'
import { netOf, onPaper } from '../../src/sheet/wrap/net.ts'
import { onFaces } from '../../src/sheet/wrap/on-faces.ts'
import { surroundings } from '../app/surroundings.ts'
import { boreInPart } from '../model/model-of.ts'
import { moved } from '../readback/read-back.ts'
import { readPdf } from '../readback/read-pdf.ts'
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

test('a net as it is printed, read back and folded up, has every centre within 0.005 mm of the model', async () => {
  const { model } = readModel({ text: cap, file: 'plan.yaml' })
  const choices = { paper: 'a4', sheets: ['wrap'] }
  const pages = [...layOutPacket(model!, choices, openFonts(surroundings.fonts), undefined).packet.pages]
  const { pdf } = await printPdf({ text: cap, file: 'plan.yaml' }, choices, surroundings)
  const part = model!.parts[0]!
  const block = blockOf(part, part.drawn)
  const panels = netOf(block, [...onFaces(part.drawn, block).keys()], true)
  const placed = pages[0]!.placed.find(one => one.drawing.id === 'cap-wrap')!
  const read = within(areaOf(placed), (await readPdf(pdf!))[0]!)
  const back = inverse(sixOf(placed))
  const folded = read.chains
    .filter(
      ({ paint, closed, curves }) => paint === 'stroke' && closed && curves.every(c => c.kind === 'curve'),
    )
    .map(({ curves }) => {
      const points = curves.flatMap(({ at }) => [0, 0.25, 0.5, 0.75].map(t => moved(back, at(t))))
      const [xs, ys] = [points.map(p => p.x), points.map(p => p.y)]
      const middle = {
        x: (Math.min(...xs) + Math.max(...xs)) / 2,
        y: (Math.min(...ys) + Math.max(...ys)) / 2,
      }
      const panel = panels.find(one => pointInRegion(onPaper(one), middle) === 'inside')!
      return foldedUp(panels, panel, middle, part.thickness.mm)
    })
  expect(folded).toHaveLength(6)
  for (const feature of part.drawn.features) {
    const { x, y, z } = boreInPart(part.drawn, feature)
    const off = Math.min(...folded.map(p => Math.hypot(p.x - x, p.y - y, p.z - z)))
    expect(off, feature.id).toBeLessThan(printable)
  }
})
