import { expect, test } from 'vitest'
import type { Bore } from '../../src/model/feature.ts'
import { built, modelOf, onlyPart, written } from './model-of.ts'

const loom = `paperjig: 1
title: Loom
units: inch
let:
  board: 7/16
  beam: ~board * 2
  reed: unknown
stock:
  plank: { thickness: board, wood: rock maple }
parts:
  cheek:
    from: plank
    size: 6 7/8 x beam + 1/8
    cuts:
      - { hole: pivot, at: { left: width / 2, bottom: thickness }, diameter: 5/16, depth: thickness - 1/8 }
      - { hole: ratchet, at: center, diameter: 6 mm }
`

test('every size of a part is in millimetres and points at the characters that say it', () => {
  const { length, width, thickness } = onlyPart(modelOf(loom))
  expect(length).toMatchObject({ mm: 6.875 * 25.4, basis: 'given' })
  expect(written(loom, length.source)).toBe('6 7/8')
  expect(width.mm).toBeCloseTo(25.4, 12)
  expect(written(loom, width.source)).toBe('beam + 1/8')
  // the board's thickness is said by the stock
  expect(thickness.mm).toBeCloseTo(11.1125, 12)
  expect(written(loom, thickness.source)).toBe('board')
  expect(thickness.source.from).toBe(loom.indexOf('thickness: board') + 'thickness: '.length)
})

test('what is calculated from a size that was scaled off the drawing is scaled too', () => {
  const { length, width } = onlyPart(modelOf(loom))
  expect([length.basis, width.basis]).toEqual(['given', 'scaled'])
})

test('formulas inside a part may use its own length, width and thickness', () => {
  const [pivot, ratchet] = onlyPart(modelOf(loom)).drawn.features.map(f => f.shape as Bore)
  expect(pivot!.centre.x).toBeCloseTo(12.7, 12)
  expect(pivot!.centre.y).toBeCloseTo(11.1125, 12)
  expect(pivot!.depth).toMatchObject({ basis: 'derived' })
  expect((pivot!.depth as { mm: number }).mm).toBeCloseTo(11.1125 - 3.175, 12)
  expect(ratchet).toMatchObject({ diameter: { mm: 6 }, depth: 'through' })
})

test.each([
  ['pivot', 'diameter', '5/16'],
  ['pivot', 'depth', 'thickness - 1/8'],
  ['ratchet', 'diameter', '6 mm'],
] as const)('the source of the %s’s %s covers "%s"', (id, key, text) => {
  const feature = onlyPart(modelOf(loom)).drawn.features.find(f => f.id === id)!
  const size = (feature.shape as Bore)[key]
  if (size === 'through') throw new Error(size)
  expect(written(loom, size.source)).toBe(text)
  expect(size.written.trim()).toBe(text)
})

test('a feature’s source covers its cut', () => {
  const [pivot] = onlyPart(modelOf(loom)).drawn.features
  expect(written(loom, pivot!.source)).toContain('pivot')
  expect(written(loom, pivot!.source)).not.toContain('ratchet')
})

/** Each a change of the plan above; the fault points at the characters named. */
test.each([
  ['a name that is not in let', 'diameter: 6 mm', 'diameter: boar * 2', 'size-formula', 'boar'],
  ['a division by zero', 'diameter: 6 mm', 'diameter: 1 / 0', 'size-formula', '0'],
  ['a length times a length', 'diameter: 6 mm', 'diameter: board * board', 'size-formula', 'board * board'],
  [
    'a diameter of nothing',
    'diameter: 6 mm',
    'diameter: board - board',
    'size-not-positive',
    'board - board',
  ],
  ['a negative diameter', 'diameter: 6 mm', 'diameter: 1/8 - 1/4', 'size-not-positive', '1/8 - 1/4'],
  ['a part of eleven metres', 'size: 6 7/8', 'size: 11000 mm', 'size-too-large', '11000 mm'],
  [
    'a depth of nothing',
    'depth: thickness - 1/8',
    'depth: thickness - board',
    'size-not-positive',
    'thickness - board',
  ],
  ['a stock that is not on the rack', 'from: plank', 'from: plnk', 'unknown-stock', 'plnk'],
  ['a fault in let', 'board: 7/16', 'board: 7 /', undefined, undefined],
])('%s is a fault at its own characters', (_, was, is, rule, text) => {
  const changed = loom.replace(was, is)
  if (rule === undefined) return expect(() => built(changed)).toThrow('no plan')
  const { model, findings } = built(changed)
  expect(model).toBeUndefined()
  expect(findings.map(f => f.rule)).toEqual([rule])
  const [place] = findings[0]!.places
  expect(place).toMatchObject({ part: 'cheek', ...(was.includes('6 mm') ? { feature: 'ratchet' } : {}) })
  expect(written(changed, place!.source!)).toBe(text)
})

test('a fault in let is reported once, where it stands, and names the nearest right name', () => {
  const changed = loom.replace('beam: ~board * 2', 'beam: ~bord * 2')
  const { findings } = built(changed)
  const inLet = findings.filter(f => written(changed, f.places[0]!.source!) === 'bord')
  expect(inLet).toMatchObject([{ rule: 'size-formula', facts: { found: 'bord', nearest: 'board' } }])
})

test('a name whose value is unknown makes what hangs on it unknown, and no fault', () => {
  const { model, findings } = built(loom.replace('diameter: 6 mm', 'diameter: reed / 2'))
  expect(findings).toEqual([])
  const feature = onlyPart(model!).drawn.features.find(f => f.id === 'ratchet')!
  expect(feature.shape).toMatchObject({ kind: 'unplaced', missing: [{ kind: 'size', name: 'diameter' }] })
})

test('a part of which the drawing gives no size is not drawn and is listed with what it lacks', () => {
  const { model, findings } = built(loom.replace('size: 6 7/8 x beam + 1/8', 'size: reed x unknown'))
  expect(findings).toEqual([])
  expect(model!.parts).toEqual([])
  expect(model!.undrawn).toMatchObject([
    {
      id: 'cheek',
      label: 'Cheek',
      missing: [
        { kind: 'size', name: 'length' },
        { kind: 'size', name: 'width' },
      ],
    },
  ])
})

test('every fault of a plan is reported in one run', () => {
  const { findings } = built(
    loom.replace('bottom: thickness', 'bottom: thick').replace('5/16', '0').replace('6 mm', 'tiny'),
  )
  expect(findings.map(f => f.rule)).toEqual(['size-not-positive', 'size-formula', 'size-formula'])
})

test.each([
  ['inch', 25.4 / 64],
  ['mm', 0.1],
])('the precision of a plan in %s that says nothing is the usual one', (unit, precision) => {
  const plain = `paperjig: 1\ntitle: Gate\nunits: ${unit}\nparts: { post: { size: 4 x 2 x 1 } }\n`
  expect(modelOf(plain).precision).toBeCloseTo(precision, 12)
})
