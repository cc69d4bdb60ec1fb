import { expect, test } from 'vitest'
import { tongueFit } from '../../../src/check/joint/tongue-fit.ts'
import { found, only } from '../found.ts'

/** A partition of 60 x 40 x 6.35 that stands in the floor by its left end, which is 40 wide. */
const plan = (cut: string, joint = 'tongue: partition.left, into: floor.mouth') => `paperjig: 1
title: Cliff railway car
units: mm
parts:
  floor: { size: 200 x 90 x 12, cuts: [{ ${cut} }] }
  partition: { size: 60 x 40 x 6.35 }
joints: [{ ${joint} }]
`
const slot = (size: string) => `slot: mouth, at: center, size: ${size}`

test.each<[what: string, text: string, direction: string, fault: string, severity: string, room: number]>([
  ['a slot narrower than the board', plan(slot('6 x 40')), 'thickness', 'tight', 'error', -0.35],
  ['a slot shorter than the board is wide', plan(slot('6.35 x 39')), 'width', 'tight', 'error', -1],
  // 0.005 in (0.127 mm) over the tongue is enough for a slot made by machine (common practice, no source)
  ['a slot wider than the board', plan(slot('7 x 40')), 'thickness', 'loose', 'warning', 0.65],
  [
    'a slot without the room that is wanted',
    plan(slot('6.35 x 40.2'), 'tongue: partition.left, into: floor.mouth, fit: 0.2'),
    'thickness',
    'close',
    'warning',
    0,
  ],
  [
    'a notch that is narrower than the board',
    plan('notch: mouth, on: top, at: { left: 50 }, size: 6 x 20'),
    'thickness',
    'tight',
    'error',
    -0.35,
  ],
])('%s', (_, text, direction, fault, severity, room) => {
  const finding = only(tongueFit, text)
  expect(finding).toMatchObject({ severity, facts: { tongue: 'partition', direction, fault } })
  expect(finding.facts.room.value).toBeCloseTo(room, 9)
  expect(finding.places[0]).toMatchObject({ part: 'floor', feature: 'mouth' })
})

test.each<[what: string, text: string]>([
  ['a slot as large as the tongue', plan(slot('6.35 x 40'))],
  ['a slot made by machine', plan(slot('6.47 x 40.1'))],
  ['a slot that follows', plan(slot('6.55 x 40.2'), 'tongue: partition.left, into: floor.mouth, fit: 0.2')],
  ['a tongue that lies the other way', plan(slot('40 x 6.35'))],
  ['round ends, whose length is not held against the tongue', plan(`${slot('44 x 6.35')}, ends: round`)],
  ['a whole part that goes through', plan(slot('6.35 x 40'), 'tongue: partition, into: floor.mouth')],
  ['a mortise for a tenon with shoulders', plan(slot('3 x 30'))],
  ['the long edge', plan(slot('60 x 6.35'), 'tongue: partition.bottom, into: floor.mouth')],
])('%s: nothing is found', (_, text) => {
  expect(found(tongueFit, text)).toEqual([])
})
