import { expect, test } from 'vitest'
import { outOfReach } from '../../../src/check/inside/out-of-reach.ts'
import { rowOffPart } from '../../../src/check/row/row-off-part.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

/** A fork seen from the front: two horns of 30 with 60 between them, 50 deep, named edges inside. */
const fork = (cut: string) => `paperjig: 1
title: Loom
units: mm
parts:
  fork:
    thickness: 24
    outline:
      - { to: [0, 0] }
      - { to: [120, 0] }
      - { to: [120, 90] }
      - { to: [90, 90] }
      - { to: [90, 40], name: inner }
      - { to: [30, 40], name: floor }
      - { to: [30, 90], name: other }
      - { to: [0, 90] }
    cuts:
${cut}
`

const pin = '      - { hole: pin, on: inner, at: { start: 20, front: center }, diameter: 6, depth: 15 }'

test('a hole in an edge that looks at another part of the piece has the wood in its way', () => {
  const finding = only(outOfReach, fork(pin))
  expect(finding).toMatchObject({ severity: 'error', facts: { why: 'in-the-way', face: 'inner' } })
  // across the gap of 60, and then 30 of the other horn
  expect(finding.measured!.value).toBeCloseTo(60, 9)
  expect(finding.limit!.value).toBeCloseTo(90, 9)
})

test('bored through the other horn it is in reach', () => {
  const through = '      - { hole: way, on: left, at: { bottom: 70, front: center }, diameter: 6, depth: 30 }'
  expect(found(outOfReach, fork(`${pin}\n${through}`))).toHaveLength(1)
  const wide = '      - { hole: way, on: other, at: { end: 20, front: center }, diameter: 8 }'
  expect(found(outOfReach, fork(`${pin}\n${wide}`)).map(f => f.places[0]!.feature)).not.toContain('way-less')
})

test('an edge that looks out of the piece is in reach', () => {
  const floor = '      - { hole: pin, on: floor, at: { start: 20, front: center }, diameter: 6, depth: 15 }'
  expect(found(outOfReach, fork(floor))).toEqual([])
})

test('a slot in such an edge is out of reach too', () => {
  const slot = '      - { slot: mouth, on: inner, at: { start: 10, front: center }, size: 20 x 6, depth: 8 }'
  expect(only(outOfReach, fork(slot))).toMatchObject({ facts: { why: 'in-the-way', what: 'slot' } })
})

test('where a side of the bounding rectangle lies off the wood, a hole begins in the air', () => {
  const top = '      - { hole: pin, on: top, at: { left: 60, front: center }, diameter: 6, depth: 60 }'
  const finding = only(outOfReach, fork(top))
  expect(finding).toMatchObject({ severity: 'warning', facts: { why: 'deeper', face: 'top' } })
  expect(finding.measured!.value).toBeCloseTo(50, 9)
})

test('a row on such a side is said once', () => {
  const row =
    '      - { row: pins, on: top, at: { left: 45, front: center }, toward: right, spacing: 15, count: 3, diameter: 6, depth: 60 }'
  const finding = only(outOfReach, fork(row))
  expect(finding.facts.count.value).toBe(3)
  expect(finding.places[0]!.feature).toBe('pins')
})

test('on a plain block everything is in reach, and a notch lies deeper', () => {
  const hole = 'hole: pin, on: bottom, at: { left: 50, front: center }, diameter: 4, depth: 15'
  expect(found(outOfReach, planWithCuts([hole]))).toEqual([])
  const notch = 'notch: step, on: bottom, at: { left: 40 }, size: 20 x 10'
  expect(only(outOfReach, planWithCuts([notch, hole])).measured!.value).toBeCloseTo(10, 9)
})

/** Every face has its own length, and a row that is too long for it runs off by as much. */
test.each([
  ['front', '{ left: 10, bottom: 20 }', 'right', 102 - 100],
  ['back', '{ left: 10, bottom: 20 }', 'right', 102 - 100],
  ['top', '{ left: 10, front: 10 }', 'right', 102 - 100],
  ['bottom', '{ left: 10, front: 10 }', 'right', 102 - 100],
  ['left', '{ bottom: 10, front: 10 }', 'top', 102 - 40],
  ['right', '{ bottom: 10, front: 10 }', 'top', 102 - 40],
])('a row on the %s that is too long runs off it', (face, place, toward, by) => {
  const row = `row: pins, on: ${face}, at: ${place}, toward: ${toward}, spacing: 30, count: 4, diameter: 4`
  const finding = only(rowOffPart, planWithCuts([row]))
  expect(finding.measured!.value).toBeCloseTo(by, 9)
  expect(finding.facts.beyond).toBe(toward)
})

test('a row on a named edge that is too long runs off its end', () => {
  const row =
    '      - { row: pins, on: floor, at: { start: 10, front: center }, toward: end, spacing: 20, count: 4, diameter: 4, depth: 8 }'
  expect(only(rowOffPart, fork(row)).measured!.value).toBeCloseTo(12, 9)
})
