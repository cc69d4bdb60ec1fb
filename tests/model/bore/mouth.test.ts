import { expect, test } from 'vitest'
import { mouthDepth } from '../../../src/model/bore/mouth.ts'
import { degrees } from '../../../src/number/degrees.ts'
import { boreWith } from './bores.ts'

/** Source: the height of a cone, (D − d)/2 · cot(A/2): a countersink from 4 to 8 mm is 2.3007 mm deep at 82°, 2.0000 at 90°. */
test.each([
  [82, 2.3007],
  [90, 2],
  [60, 3.4641],
])('a countersink of %d° from 4 to 8 mm is %d mm deep', (angle, depth) => {
  const bore = boreWith(`diameter: 4, countersink: { diameter: 8, angle: ${angle} }`)
  expect(mouthDepth(bore)).toBeCloseTo(depth, 4)
  expect(bore.mouth?.diameter.mm).toBe(8)
})

/** Common practice, no source: the heads of wood screws in inches are 82°, of metric ones 90°. */
test.each([
  ['inch', 82],
  ['mm', 90],
])('a countersink whose angle the plan leaves out is, in %s, one of %d°', (units, angle) => {
  const { mouth } = boreWith('diameter: 1, countersink: 2', 'at: center', units)
  if (mouth?.kind !== 'countersink') throw new Error('no countersink')
  expect(degrees(mouth.angle)).toBeCloseTo(angle, 12)
})

test('a counterbore is as wide and as deep as it is written, in either form', () => {
  for (const written of ['9 x 3', '{ diameter: 9, depth: 3 }']) {
    const bore = boreWith(`diameter: 4, counterbore: ${written}`)
    expect(bore.mouth).toMatchObject({ kind: 'counterbore', diameter: { mm: 9 }, depth: { mm: 3 } })
    expect(mouthDepth(bore)).toBe(3)
  }
})

test('a hole without a mouth has none of any depth', () => {
  expect(mouthDepth(boreWith('diameter: 4'))).toBe(0)
})
