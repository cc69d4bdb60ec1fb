import { expect, test } from 'vitest'
import { readCards } from '../../../src/app/cards/read-cards.ts'
import type { Entry } from '../../../src/sheet/cards/card.ts'
import { plain } from '../../../src/text/words.ts'

const gate = `paperjig: 1
title: Sluice gate
units: inch
let: { board: 7/16, guess: ~5/8 }
stock: { plank: { thickness: board, label: Oak plank } }
parts:
  stile:
    make: 2
    mirrored: true
    from: plank
    page: 3
    size: 6 7/8 x ~1 5/16
    corners: { top-left: 1/4 }
    cuts:
      - { hole: hinge, at: { left: length / 2, bottom: guess }, diameter: unknown, depth: 1/4 }
      - { hole: latch, at: { right: 1 }, diameter: 1/8 }
      - { row: pegs, on: top, at: { left: 1/2, front: center }, toward: right, spacing: 1 1/4, count: 4, diameter: 3/32 }
      - { slot: bar, at: { left: 2, bottom: unknown }, size: 1 x board }
  wedge: { size: 2 x 1 x board }
`
const plan = (text: string) => ({ text, file: 'gate.yaml' })
const blocks = (text: string) => readCards(plan(text), undefined).cards![0]!.blocks
const said = ({ what, from, value }: Entry) => {
  const known = 'words' in value ? `${value.kind} ${plain(value.words)}` : value.kind
  return `${what}${from === undefined ? '' : ` ${from}`}: ${known}`
}

test('a card has what the plan says of a part, in the order in which the plan asks for it', () => {
  const { cards } = readCards(plan(gate), undefined)
  expect(cards!.map(({ fields }) => fields.map(({ text }) => text))).toEqual([
    ['Stile', '2', 'yes', 'Oak plank', '3'],
    ['Wedge', '1', 'no', undefined, undefined],
  ])
  expect(cards![0]!.blocks.map(({ heading }) => heading.map(({ text }) => text))).toEqual([
    [undefined],
    ['hinge', 'front'],
    ['latch', 'front'],
    ['pegs', 'top', '4'],
    ['bar', 'front'],
  ])
})

test('a size stands as given, as measured where it was scaled off the drawing, or as not given', () => {
  expect(blocks(gate)[0]!.entries.map(said)).toEqual([
    'length: given 6 7/8"',
    'width: measured 1 5/16"',
    'radius top left: given 1/4"',
    'thickness: given 7/16"',
  ])
  expect(blocks(gate)[1]!.entries.map(said)).toEqual([
    'place, from left: given 3 7/16"',
    'and from bottom: measured 5/8"',
    'diameter: not-given',
    'depth: given 1/4"',
  ])
})

test('a distance that the plan leaves out is open, to be filled in', () => {
  expect(blocks(gate)[2]!.entries.map(said)).toEqual([
    'place, from right: given 1"',
    'and from: open',
    'diameter: given 1/8"',
    'depth: given through',
  ])
})

test('a row has its spacing and the side that it leads to, a slot its two sizes', () => {
  expect(blocks(gate)[3]!.entries.map(said)).toContain('spacing, toward right: given 1 1/4"')
  expect(blocks(gate)[4]!.entries.map(said)).toEqual([
    'place, from left: given 2"',
    'and from bottom: not-given',
    'along: given 1"',
    'across: given 7/16"',
    'depth: given through',
  ])
})

test('what is confirmed counts as given', () => {
  const width = blocks(`${gate}confirmed: [stile]\n`)[0]!.entries[1]!
  expect(said(width)).toBe('width: given 1 5/16"')
})

test('only the parts asked for have a card; one that the plan does not have is an error', () => {
  expect(readCards(plan(gate), ['wedge']).cards).toHaveLength(1)
  const { cards, findings } = readCards(plan(gate), ['wegde'])
  expect(cards).toBeUndefined()
  expect(findings).toMatchObject([{ rule: 'unknown-part', facts: { nearest: 'wedge' } }])
})

test('every kind of cut and of part has its rows', () => {
  const kinds = `paperjig: 1
title: Kinds
units: mm
parts:
  plate:
    size: 100 x 60 x 8
    cuts:
      - { grid: pegs, at: { left: 10, bottom: 10 }, spacing: 10 x 12, count: 3 x 2, diameter: 4 }
      - { hole-circle: bolts, at: center, circle: 40, count: 6, diameter: 4 }
      - { notch: step, on: top, at: { left: 5 }, size: 10 x 4 }
      - { cut-out: window, at: { left: 70, bottom: 30 }, size: 20 x 20 }
  wheel: { round: 57, thickness: 8 }
  tie: { taper: { left: 20, right: 10 }, size: 80, thickness: 5 }
`
  const { cards, findings } = readCards(plan(kinds), ['plate', 'wheel'])
  expect(findings).toEqual([])
  const names = cards!.flatMap(({ blocks }) => blocks.map(({ entries }) => entries.map(({ what }) => what)))
  expect(names).toEqual([
    ['length', 'width', 'thickness'],
    ['place, from', 'and from', 'spacing along', 'spacing across', 'diameter', 'depth'],
    ['place, from', 'and from', 'circle of centres', 'diameter', 'depth'],
    ['place, from', 'along the edge', 'into the part'],
    ['place, from', 'and from', 'along', 'across'],
    ['diameter', 'thickness'],
  ])
})

test('a card asks how a hole leans, what widens it and what it is bored with, where the plan says so', () => {
  const leg = (keys: string) => `paperjig: 1
title: Stool
units: inch
parts: { seat: { size: 8 x 8 x 1, cuts: [{ hole: leg, at: center, diameter: 1/2, ${keys} }] } }
`
  const last = (keys: string) => blocks(leg(keys))[1]!.entries.slice(3).map(said)
  expect(last('lean: [{ toward: left, angle: 8 }, { toward: top, angle: ~12 }]')).toEqual([
    'depth: given through',
    'leans toward left: given 8°',
    'leans toward top: measured 12°',
  ])
  expect(last('counterbore: 3/4 x unknown, bit: brad')).toEqual([
    'depth: given through',
    'counterbore: given 3/4"',
    'counterbore deep: not-given',
    'bit: given brad',
  ])
  expect(last('countersink: { diameter: 3/4, angle: 90 }')).toEqual([
    'depth: given through',
    'countersink: given 3/4"',
    'countersink angle: given 90°',
  ])
  expect(last('countersink: 3/4, lean: { toward: left, angle: unknown }')).toEqual([
    'depth: given through',
    'leans toward left: not-given',
    'countersink: given 3/4"',
  ])
})
