import { expect, test } from 'vitest'
import { union } from '../../../src/geometry/boolean/boolean.ts'
import { shift } from '../../../src/geometry/shape/matrix.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { comb } from '../generate/comb.ts'
import { gear } from '../generate/gear.ts'
import { randomFrom } from '../generate/random.ts'
import { spiral } from '../generate/spiral.ts'
import { star } from '../generate/star.ts'
import { brokenLaws } from './laws.ts'

const random = randomFrom(1)
const shapes = {
  gear: gear(60),
  comb: comb(60, 40),
  star: star(200, () => 100 + 40 * random()),
  spiral: spiral(40, 5, 0.6),
}

for (const [name, shape] of Object.entries(shapes)) {
  test(`a ${name} and its copy shifted by (7.3, 3.1), as in the benchmark, obey the laws`, () => {
    expect(brokenLaws([shape], [transformRegion(shape, shift(7.3, 3.1))], 1)).toEqual([])
  })
}

test('every tooth of a large gear is still there after a union with itself', () => {
  const whole = gear(2500)
  const outcome = union([whole], [whole])
  expect(outcome.ok && outcome.value.map(r => r.outer.segments.length)).toEqual([10_000])
})
