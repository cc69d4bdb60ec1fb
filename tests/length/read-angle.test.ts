import { expect, test } from 'vitest'
import { evaluateAngle } from '../../src/length/evaluate.ts'
import { readAngle } from '../../src/length/read-angle.ts'
import { readSize } from '../../src/length/read-size.ts'
import { angleText } from '../../src/length/show-angle.ts'
import { givenLength, value } from './reading.ts'

test.each([
  ['45', Math.PI / 4],
  ['22 1/2', Math.PI / 8],
  ['30°', Math.PI / 6],
  ['30 º', Math.PI / 6],
  ['30 deg', Math.PI / 6],
  ['1 degree', Math.PI / 180],
  ['-90', -Math.PI / 2],
  ['360 / 7', (2 * Math.PI) / 7],
  ['90° - 22.5', (3 * Math.PI) / 8],
] as const)('"%s" is %d in radians', (text, wanted) => {
  expect(value(readAngle(text))).toBeCloseTo(wanted, 15)
})

test('an angle may be calculated from names, and travels with what it came from', () => {
  const scope = new Map([
    ['tilt', { kind: 'angle', angleDegrees: 15, basis: 'scaled' } as const],
    ['rise', givenLength(10)],
    ['run', givenLength(40)],
  ])
  const angle = (text: string) => value(evaluateAngle(value(readSize(text)), scope, 'mm'))
  expect(angle('2 * tilt')).toEqual({ kind: 'angle', radians: Math.PI / 6, basis: 'scaled' })
  expect(angle('360 * rise / run')).toEqual({ kind: 'angle', radians: Math.PI / 2, basis: 'derived' })
  expect(angle('~ 30')).toMatchObject({ basis: 'scaled' })
  expect(angle('unknown')).toEqual({ kind: 'unknown', names: [] })
})

test.each([
  [Math.PI / 8, '22.5°'],
  [-Math.PI / 2, '-90°'],
  [1, '57.3°'],
  [0, '0°'],
])('%d radians is written %s', (radians, wanted) => {
  expect(angleText(radians)).toBe(wanted)
})
