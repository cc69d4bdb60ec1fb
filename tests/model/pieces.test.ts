import { expect, test } from 'vitest'
import { built, modelOf, onlyPart, planOf } from './model-of.ts'

const handsOf = (body: string) =>
  onlyPart(modelOf(planOf(body))).pieces.map(({ id, number, hand }) => [id, number, hand])

test('a part is made once unless the plan says otherwise', () => {
  expect(handsOf('')).toEqual([['plank/1', 1, 'drawn']])
})

test('pieces are counted from 1 and all alike', () => {
  expect(handsOf('    make: 3\n')).toEqual([
    ['plank/1', 1, 'drawn'],
    ['plank/2', 2, 'drawn'],
    ['plank/3', 3, 'drawn'],
  ])
})

test('of a mirrored part the first half is as drawn and the second half mirrored', () => {
  expect(handsOf('    make: 4\n    mirrored: true\n')).toEqual([
    ['plank/1', 1, 'drawn'],
    ['plank/2', 2, 'drawn'],
    ['plank/3', 3, 'mirrored'],
    ['plank/4', 4, 'mirrored'],
  ])
})

test('a part is labelled by its id unless the plan has a label', () => {
  const labels = modelOf(`paperjig: 1
title: Cliff railway
units: mm
parts:
  side-frame: { size: 50 x 20 x 5 }
  axle-box: { size: 50 x 20 x 5, label: "Box, axle" }
`).parts.map(p => p.label)
  expect(labels).toEqual(['Side frame', 'Box, axle'])
})

test('face edge and reference end are bottom and left unless the plan says otherwise', () => {
  expect(onlyPart(modelOf(planOf('')))).toMatchObject({ faceEdge: 'bottom', referenceEnd: 'left' })
  const turned = planOf('    face-edge: top\n    reference-end: right\n')
  expect(onlyPart(modelOf(turned))).toMatchObject({ faceEdge: 'top', referenceEnd: 'right' })
})

const stock = (size: string, plank = '{ thickness: 12, wood: ash }') => `paperjig: 1
title: Gate
units: mm
stock: { plank: ${plank}, "rail-stock": { thickness: 9, label: Old rails } }
parts: { rail: { from: plank, size: ${size} } }
`

test('the thickness is that of the stock unless the size gives one', () => {
  expect(onlyPart(modelOf(stock('80 x 20')))).toMatchObject({
    thickness: { mm: 12 },
    stock: 'plank',
    wood: 'ash',
  })
  expect(onlyPart(modelOf(stock('80 x 20 x 10'))).thickness.mm).toBe(10)
})

test('a stock with a label is called by it', () => {
  const part = onlyPart(modelOf(stock('80 x 20').replace('from: plank', 'from: rail-stock')))
  expect(part.stock).toBe('Old rails')
  expect(part.wood).toBeUndefined()
})

test('a part with neither a thickness nor a stock is a fault', () => {
  const { model, findings } = built(planOf('', '100 x 40'))
  expect(model).toBeUndefined()
  expect(findings).toMatchObject([{ rule: 'thickness-missing', places: [{ part: 'plank' }] }])
})

test('a stock of unknown thickness leaves the part undrawn', () => {
  const { undrawn } = modelOf(stock('80 x 20', '{ thickness: unknown }'))
  expect(undrawn).toMatchObject([{ id: 'rail', missing: [{ kind: 'size', name: 'thickness' }] }])
})

test('a fault in the stock is reported once, where it stands, whether or not a part asks for it', () => {
  const two = stock('80 x 20', '{ thickness: thin, width: 0 }').replace(
    'parts: {',
    'parts: { gate: { from: plank, size: 90 x 20 },',
  )
  expect(built(two).findings).toMatchObject([
    { rule: 'size-formula', facts: { found: 'thin' } },
    { rule: 'size-not-positive' },
  ])
  const unused = stock('80 x 20 x 5', '{ thickness: 4, length: -1 }').replace('from: plank, ', '')
  expect(built(unused).findings).toMatchObject([{ rule: 'size-not-positive' }])
})
