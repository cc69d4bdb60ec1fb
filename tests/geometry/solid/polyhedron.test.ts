import { expect, test } from 'vitest'
import { reach } from '../../../src/geometry/solid/body.ts'
import { bodyOf, clip, prismoid } from '../../../src/geometry/solid/polyhedron.ts'
import { at } from './rods.ts'

test.each([
  0.5,
  Number.EPSILON,
  // times the depth this is nothing
  Number.MIN_VALUE,
])('a block that stands %s out of a plane is cut off at it', out => {
  const squareAt = (z: number) => [at(0, 0, z), at(1, 0, z), at(1, 1, z), at(0, 1, z)]
  const up = at(0, 0, 1)
  const left = clip(prismoid(squareAt(-0.01), squareAt(out)), { normal: up, offset: 0 })
  expect(reach(bodyOf(left)!, up)).toBeCloseTo(0, 12)
})
