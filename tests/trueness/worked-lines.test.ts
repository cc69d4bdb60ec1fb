import { expect, test } from 'vitest'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { readModel } from '../../src/app/read-model.ts'
import { isPlaced, type Placed } from '../../src/model/feature.ts'
import type { Part, Piece } from '../../src/model/part.ts'
import { edgeLines, workedLines } from '../../src/model/strip.ts'
import { printable } from '../../src/number/tolerance.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { surroundings } from '../app/surroundings.ts'
import { type Exact, exactContour, fromExact, toChain } from '../readback/exact.ts'
import { after, type ReadBack, type ReadChain, type Six } from '../readback/read-back.ts'
import { readPdf } from '../readback/read-pdf.ts'
import { readSvg } from '../readback/read-svg.ts'
import { sixOf } from './on-page.ts'

const text = `paperjig: 1
title: Pier lantern room
units: mm
parts:
  sill:
    make: 2
    mirrored: true
    transfer: template
    size: 150 x 50 x 12
    corners: { top-left: 6, bottom-right: 3 }
    cuts:
      - { groove: pane, at: { bottom: 9 }, width: 3, depth: 4 }
      - { groove: housing, at: { left: 50 }, width: 12, depth: 3, stopped: { top: 12 }, length: 20 }
      - { groove: pocket, at: { top: 12 }, width: 3, depth: 3, stopped: { left: 70, right: 40 } }
      - { rebate: lip, edge: top, size: 6 x 8, stopped: { right: 7 } }
      - { bevel: seat, on: right, angle: 15, short: front }
      - { bevel: heel, on: left, angle: 10, short: back }
      - { chamfer: ease, edges: [left, bottom], size: 1.5 }
      - { engrave: anchor, at: { left: 30, bottom: 20 }, lines: [[[0, 0], [6, 12], [12, 0], [0, 0]], [[6, 12], [6, 0]]] }
      - { engrave: number, at: { right: 30, bottom: 17 }, text: "Nº 2 & 3", height: 6 }
  rim: { transfer: template, round: 70, inside: 20, thickness: 10, cuts: [{ round-over: brow, edges: all, radius: 3 }] }
`

type Wanted = { readonly name: string; readonly line: Exact; readonly dashed: boolean }

/** From the features as drawn, whose lines on the back are turned round here, apart from the program's own way. */
function wantedLines(part: Part, hand: Piece['hand'], placement: Six): readonly Wanted[] {
  const turned: Six = [-1, 0, 0, 1, part.length.mm, 0]
  const place = hand === 'mirrored' ? after(placement, turned) : placement
  return part.drawn.features.filter(isPlaced).flatMap(feature => {
    const at = feature.face === 'back' ? after(place, turned) : place
    const dashed = feature.shape.kind === 'bevel'
    return linesOf(feature).map(line => ({ name: feature.id, line: exactContour(line, at), dashed }))
  })
}

function linesOf({ face, shape }: Placed) {
  if (shape.kind === 'engraved-lines') return shape.paths
  if (shape.kind === 'engraved-text' || !('region' in shape)) return []
  return shape.kind === 'bevel' && face === 'front' ? edgeLines(shape.region) : workedLines(shape.region)
}

/** The worst of a line from the nearest that the file has. */
function deviation({ line, dashed }: Wanted, { chains }: ReadBack): number {
  const alike = chains.filter(c => c.paint === 'stroke' && c.dashes.length > 0 === dashed)
  return Math.min(...alike.map(({ curves }) => Math.max(fromExact(line, curves), toChain(line, curves))))
}

const isEngraved = ({ groups }: ReadChain) => groups.some(g => g === 'engrave' || g.includes('.engrave'))

test('every line that is worked to along a face or an edge is printed within 0.005 mm, on both hands', async () => {
  const input = { text, file: 'pier.yaml' }
  const { model, findings, style } = readModel(input)
  const before = { findings, style, workshop: defaultWorkshop }
  const pages = [...layOutPacket(model!, {}, openFonts(surroundings.fonts), undefined, before).packet.pages]
  const { pdf } = await printPdf(input, {}, surroundings)
  const { files } = printSvg(input, {}, surroundings)
  const pdfPages = await readPdf(pdf!)
  const svgPages = files
    .filter(({ name }) => name.startsWith('page-'))
    .map(({ bytes }) => readSvg(new TextDecoder().decode(bytes)))
  let compared = 0
  for (const reads of [pdfPages, svgPages]) {
    for (const [i, { placed }] of pages.entries()) {
      for (const one of placed) {
        const shown = model!.parts.flatMap(part =>
          part.pieces
            .filter(
              ({ number }) =>
                one.drawing.id === `${part.id}-template${part.pieces.length > 1 ? `-${number}` : ''}`,
            )
            .map(({ hand }) => ({ part, hand })),
        )[0]
        if (shown === undefined) continue
        for (const wanted of wantedLines(shown.part, shown.hand, sixOf(one))) {
          expect(deviation(wanted, reads[i]!), `${wanted.name} on page ${i + 1}`).toBeLessThan(printable)
          compared += 1
        }
      }
    }
  }
  // in two files, of two hands: 2 lines of the groove, 1 and 1 of the stopped ones, 1 of the rebate, 2 of bevels, 2 of
  // chamfers, 2 drawn; and 2 rims of the ring
  expect(compared).toBe(2 * (2 * 11 + 2))
})

test('what is engraved has a layer of its own in every file, and nothing else is in it', async () => {
  const input = { text, file: 'pier.yaml' }
  const { pdf } = await printPdf(input, {}, surroundings)
  const { files } = printSvg(input, {}, surroundings)
  const pages = [
    ...(await readPdf(pdf!)),
    ...files
      .filter(({ name }) => name.startsWith('page-'))
      .map(({ bytes }) => readSvg(new TextDecoder().decode(bytes))),
  ]
  const counts = pages.map(({ chains }) => chains.filter(isEngraved).length).filter(n => n > 0)
  // two lines, and the letters of "Nº 2 & 3" by their outlines: N, º and its hole, 2, & and its two holes, 3
  expect(new Set(counts)).toEqual(new Set([2 + 1 + 2 + 1 + 3 + 1]))
})

test('a file for a machine holds an engraving where it is asked for, apart from what is cut', () => {
  const input = { text, file: 'pier.yaml' }
  const machine = (choices: { readonly engraving?: true }) =>
    printSvg(input, {}, surroundings, choices)
      .files.filter(({ name }) => name.startsWith('sill-template'))
      .map(({ bytes }) => new TextDecoder().decode(bytes))
  for (const file of machine({})) expect(file).not.toContain('engrave')
  const engraved = machine({ engraving: true })
  expect(engraved).toHaveLength(2)
  for (const file of engraved) {
    expect(readSvg(file).chains.filter(isEngraved)).toHaveLength(10)
    expect(file).toContain('data-layer="engrave"')
  }
})
