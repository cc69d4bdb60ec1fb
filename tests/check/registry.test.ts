import { expect, test } from 'vitest'
import { check } from '../../src/check/registry.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { modelOf, planWithCuts } from '../model/model-of.ts'

test('a sound plan has no findings', () => {
  const gate = `paperjig: 1
title: Garden gate
units: inch
stock: { rail: { thickness: 3/4, wood: oak } }
parts:
  post:
    make: 2
    mirrored: true
    from: rail
    size: 8 x 1 1/2
    corners: { top-left: 1/4, top-right: { chamfer: 1/4 } }
    cuts:
      - { slot: mortise, at: { left: 1, bottom: center }, size: 1 x 3/8, ends: round, depth: 1/2 }
      - { row: pickets, on: top, at: { left: center, front: center }, toward: right, spacing: 1, count: 6, diameter: 1/4, depth: 3/8 }
      - { hole: pivot, on: left, at: center, diameter: 1/4, depth: 13/16 }
      - { notch: rebate, on: right, at: { bottom: 0 }, size: 1/2 x 1/4 }
`
  expect(check(modelOf(gate), defaultWorkshop)).toEqual([])
})

test('findings come in the order of the plan’s text, whatever rule they are of', () => {
  const found = check(
    modelOf(
      planWithCuts([
        'hole: out, at: { left: 0, bottom: 20 }, diameter: 4',
        'hole: both, diameter: unknown',
        'hole: nowhere, diameter: 4',
        'hole: out-again, at: { right: 0, bottom: 20 }, diameter: 4',
      ]),
    ),
    defaultWorkshop,
  )
  expect(found.map(f => [f.places[0]!.feature, f.rule])).toEqual([
    ['out', 'outside-part'],
    ['both', 'position-missing'],
    ['both', 'diameter-missing'],
    ['nowhere', 'position-missing'],
    ['out-again', 'outside-part'],
  ])
})
