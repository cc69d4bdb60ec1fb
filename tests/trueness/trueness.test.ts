import { expect, test } from 'vitest'
import { printSvg } from '../../src/app/print-svg.ts'
import { readModel } from '../../src/app/read-model.ts'
import { printable } from '../../src/number/tolerance.ts'
import { surroundings } from '../app/surroundings.ts'
import { readSvg } from '../readback/read-svg.ts'
import { compareTemplate } from './compare.ts'
import { exactTemplate, placementAlone } from './exact-template.ts'
import { formats, measurePlan, somePrinter } from './measure.ts'
import { papersToMeasure, plansToMeasure } from './plans.ts'
import { barDeviation } from './scale-bars.ts'

const cases = plansToMeasure().flatMap(plan => [
  ...papersToMeasure.map(paper => ({ ...plan, paper, printer: undefined, corrected: 'as it is' })),
  ...papersToMeasure.map(paper => ({
    ...plan,
    paper,
    printer: somePrinter,
    corrected: 'corrected for a printer',
  })),
])

test.each(cases)(
  '$name on $paper, $corrected, is within 0.005 mm of the model in every file',
  async ({ name, text, paper, printer }) => {
    const measured = await measurePlan(name, text, paper, printer)
    expect(measured.map(m => m.format)).toEqual(formats)
    for (const { format, paper, trueness } of measured) {
      for (const [what, deviation] of Object.entries(trueness)) {
        expect(deviation, `${what} in ${format} on ${paper}`).toBeLessThan(printable)
      }
    }
  },
)

const plate = `paperjig: 1
title: Gate
units: mm
parts: { post: { size: 80 x 30 x 20, corners: 5, cuts: [ { hole: pin, at: { left: 10, bottom: 12 }, diameter: 6 } ] } }
`

function readAlone() {
  const { model } = readModel({ text: plate, file: 'gate.yaml' })
  const { files } = printSvg({ text: plate, file: 'gate.yaml' }, {}, surroundings)
  const file = files.find(f => f.name === 'post-template.svg')!
  return { part: model!.parts[0]!, read: readSvg(new TextDecoder().decode(file.bytes)) }
}

test.each([
  ['a part put 0.01 mm aside', (x: number) => x + 0.01, { outline: 0.01, centre: 0.01, radius: 0 }],
  ['a print 1 % too long', (x: number) => x * 1.01, { outline: 0.81, centre: 0.11, radius: 0.0302 }],
])('the comparison sees %s', (_, bend, { outline, centre, radius }) => {
  const { part, read } = readAlone()
  const bent = {
    ...read,
    chains: read.chains.map(c => ({
      ...c,
      curves: c.curves.map(({ kind, at }) => ({
        kind,
        at: (t: number) => ({ x: bend(at(t).x), y: at(t).y }),
      })),
    })),
  }
  const found = compareTemplate(exactTemplate(part, 'drawn', placementAlone(part, 'drawn')), bent)
  expect(found.outline).toBeCloseTo(outline, 3)
  expect(found.centre).toBeCloseTo(centre, 3)
  expect(found.radius).toBeCloseTo(radius, 2)
})

test('the comparison sees a hole that is missing, a line too many, and the wrong hand', () => {
  const { part, read } = readAlone()
  const exact = exactTemplate(part, 'drawn', placementAlone(part, 'drawn'))
  expect(() => compareTemplate(exact, { ...read, chains: read.chains.slice(1) })).toThrow('no more lines')
  expect(() => compareTemplate(exact, { ...read, chains: [...read.chains, { ...read.chains[0]! }] })).toThrow(
    '1 lines',
  )
  const other = exactTemplate(part, 'mirrored', placementAlone(part, 'mirrored'))
  expect(compareTemplate(other, read).centre).toBeCloseTo(60, 6)
})

test('the comparison sees a scale bar that is a hundredth of a millimetre short', () => {
  const { files } = printSvg({ text: plate, file: 'gate.yaml' }, {}, surroundings)
  const page = readSvg(new TextDecoder().decode(files.find(f => f.name === 'page-2.svg')!.bytes))
  const drawing = [{ left: 20, right: 190, bottom: 150, top: 280 }]
  expect(barDeviation(page, drawing)).toBeLessThan(printable)
  const short = {
    ...page,
    chains: page.chains.map(c => ({
      ...c,
      curves: c.curves.map(({ kind, at }) => ({
        kind,
        at: (t: number) => ({ x: at(t).x * 0.9999, y: at(t).y }),
      })),
    })),
  }
  expect(barDeviation(short, drawing)).toBeGreaterThan(0.01)
})
