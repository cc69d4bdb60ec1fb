import { expect, test } from 'vitest'
import { neckTooNarrow } from '../../../src/check/wood/neck-too-narrow.ts'
import { planOf } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const inch = 25.4

/** A plan of one part with any outline; the grain runs along its longer side. */
const outlined = (points: readonly (readonly [number, number])[]) => `paperjig: 1
title: Loom
units: mm
parts:
  comb:
    thickness: 10
    outline: [${points.map(([x, y]) => `{ to: [${x}, ${y}] }`).join(', ')}]
`

/** On 100 long and 40 wide, a neck of the width w: between two notches, or as a horn that stands up. */
const alongTheGrain = (w: number) =>
  planOf(
    `    cuts:
      - { notch: low, on: bottom, at: { left: 45 }, size: 10 x ${(40 - w) / 2} }
      - { notch: high, on: top, at: { left: 45 }, size: 10 x ${(40 - w) / 2} }
`,
  )
const shortGrain = (w: number) =>
  outlined([
    [0, 0],
    [100, 0],
    [100, 20],
    [60, 20],
    [60, 40],
    [60 - w, 40],
    [60 - w, 20],
    [0, 20],
  ])

test.each<[what: string, text: string, width: number, limit: number, severity: string, grain: string]>([
  // common practice, no source: 1/8 in along the grain, 1/4 in across; under half of it it breaks
  ['3 mm along the grain', alongTheGrain(3), 3, inch / 8, 'warning', 'along'],
  ['1 mm along the grain', alongTheGrain(1), 1, inch / 8, 'error', 'along'],
  ['5 mm across the grain', shortGrain(5), 5, inch / 4, 'warning', 'across'],
  ['3 mm across the grain', shortGrain(3), 3, inch / 4, 'error', 'across'],
])('%s', (_, text, width, limit, severity, grain) => {
  const finding = only(neckTooNarrow, text)
  expect(finding).toMatchObject({ severity, facts: { grain } })
  expect(finding.measured!.value).toBeCloseTo(width, 9)
  expect(finding.limit!.value).toBeCloseTo(limit, 9)
})

test('aslant the limit lies between the two, by Hankinson’s formula', () => {
  // a slanting neck at 45°: sin² = cos² = 1/2
  const w = 4
  const d = w / Math.SQRT2
  const finding = only(
    neckTooNarrow,
    outlined([
      [0, 0],
      [100, 0],
      [100, 30],
      [50 + d, 30],
      [80 + d, 60],
      [80 - d, 60],
      [50 - d, 30],
      [0, 30],
    ]),
  )
  expect(finding.facts.grain).toBe('aslant')
  expect(finding.measured!.value).toBeCloseTo(w, 6)
  expect(finding.limit!.value).toBeCloseTo((inch / 8 + inch / 4) / 2, 6)
})

test('a ring has short grain somewhere, wherever it is thin', () => {
  const ring = (inside: number) => `paperjig: 1
title: Loom
units: mm
parts:
  hoop: { round: 100, inside: ${inside}, thickness: 10 }
`
  expect(only(neckTooNarrow, ring(90)).measured!.value).toBeCloseTo(5, 9)
  expect(only(neckTooNarrow, ring(90)).limit!.value).toBeCloseTo(inch / 4, 9)
  expect(found(neckTooNarrow, ring(80))).toEqual([])
})

test.each([
  ['a thin strip is as thin as it was asked for', planOf('', '100 x 2 x 2')],
  ['so is one with rounded corners', planOf('    corners: 0.5\n', '100 x 2 x 2')],
  ['a neck along the grain that would be too narrow across it', alongTheGrain(5)],
  ['a horn across the grain that is wide enough', shortGrain(6.5)],
  ['a disc', 'paperjig: 1\ntitle: Loom\nunits: mm\nparts:\n  wheel: { round: 3, thickness: 10 }\n'],
])('%s: nothing is found', (_, text) => {
  expect(found(neckTooNarrow, text)).toEqual([])
})

test('a neck across the grain is found beside a narrower one along it that is wide enough', () => {
  // 4 mm along the grain under the bite, 5 mm across it in the horn: limits 3.175 and 6.35
  const finding = only(
    neckTooNarrow,
    outlined([
      [0, 0],
      [20, 0],
      [20, 16],
      [30, 16],
      [30, 0],
      [100, 0],
      [100, 20],
      [70, 20],
      [70, 50],
      [65, 50],
      [65, 20],
      [0, 20],
    ]),
  )
  expect(finding.facts.grain).toBe('across')
  expect(finding.measured!.value).toBeCloseTo(5, 9)
})
