import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import {
  type Matrix,
  mirrorAcross,
  quarterTurns,
  scale,
  shift,
  turn,
} from '../../../src/geometry/shape/matrix.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import { operations, perimeter, totalArea } from './laws.ts'
import { randomCase } from './random-cases.ts'

const moves: readonly (readonly [string, Matrix, number])[] = [
  ['turned', turn(0.7), 1],
  ['turned by a quarter', quarterTurns(1), 1],
  ['mirrored', mirrorAcross(3), 1],
  ['shifted by 10 m', shift(10_000, -10_000), 1],
  ['enlarged', scale(7), 7],
  ['made smaller', scale(1 / 7), 1 / 7],
]

const reversed = (r: Region): Region => ({
  outer: reverseContour(r.outer),
  holes: r.holes.map(reverseContour),
})

test('moving, mirroring, scaling or reversing both shapes does the same to the result', () => {
  const seed = Date.now() % 1_000_000_000
  console.log(`moved booleans, seed ${seed}`)
  fc.assert(
    fc.property(fc.nat(2_000_000_000), fc.constantFrom(...moves), (number, [name, matrix, factor]) => {
      const { first, second } = randomCase(number)
      const move = (list: readonly Region[]) => list.map(r => transformRegion(r, matrix))
      const slack =
        2 * coincident * (perimeter(first) + perimeter(second)) * Math.max(factor, factor * factor)
      for (const { run } of Object.values(operations)) {
        const plain = run(first, second)
        const moved = run(move(first), move(second))
        const turned = run(first.map(reversed), second.map(reversed))
        if (!plain.ok || !moved.ok || !turned.ok) throw new Error('a fault')
        const area = totalArea(plain.value)
        expect(
          Math.abs(totalArea(moved.value) - area * factor * factor),
          `${name} ${number}`,
        ).toBeLessThanOrEqual(slack + 1e-9 * area * factor * factor + 1e-9)
        expect(Math.abs(totalArea(turned.value) - area)).toBeLessThanOrEqual(slack + 1e-9 * area)
      }
    }),
    { numRuns: 150, seed, endOnFailure: true },
  )
})
