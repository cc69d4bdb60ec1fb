import { beforeAll, expect, test } from 'vitest'
import { difference, intersection, union } from '../../../src/geometry/boolean/boolean.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { compose, shift, turn } from '../../../src/geometry/shape/matrix.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { bowed } from '../generate/bow.ts'
import { gear } from '../generate/gear.ts'
import { randomFrom } from '../generate/random.ts'
import { solid } from '../generate/solid.ts'
import { spiral } from '../generate/spiral.ts'
import { perimeter, totalArea } from './laws.ts'
import { type Judge, loadOpenCascade } from './opencascade.ts'

let judge: Judge
beforeAll(async () => {
  judge = await loadOpenCascade()
})

const random = randomFrom(11)
const flower = (petals: number): Region =>
  bowed(
    Array.from({ length: petals }, (_, i) => {
      const angle = (2 * Math.PI * i) / petals
      return { x: 20 * Math.cos(angle), y: 20 * Math.sin(angle) }
    }),
    () => 0.5 + 2 * random(),
  )

const outlines: Readonly<Record<string, Region>> = {
  disc: solid(circle({ x: 0, y: 0 }, 20)),
  ring: { outer: circle({ x: 0, y: 0 }, 20), holes: [reverseContour(circle({ x: 1, y: 2 }, 11))] },
  slot: slot({ x: -15, y: -3 }, { x: 15, y: 4 }, 14),
  rectangle: rectangle({ left: -18, bottom: -9, right: 19, top: 12 }),
  gear: gear(16),
  flower: flower(7),
  spiral: spiral(5, 6, 0.55),
}

const operations = { Fuse: union, Common: intersection, Cut: difference } as const

for (const [a, first] of Object.entries(outlines)) {
  for (const [b, plain] of Object.entries(outlines)) {
    test(`${a} and ${b}, turned and shifted, give the areas that a CAD kernel gives`, () => {
      const second = transformRegion(plain, compose(turn(0.1 + random()), shift(9 * random(), 7 * random())))
      for (const [name, ours] of Object.entries(operations)) {
        const outcome = ours([first], [second])
        if (!outcome.ok) throw new Error(outcome.fault.reason)
        const theirs = judge.area(name as keyof typeof operations, first, second)
        const area = totalArea(outcome.value)
        // the bound that the kernel is held to
        const slack = 1e-7 * perimeter([first, second]) + 1e-10 * area
        expect(Math.abs(area - theirs), `${name}: ${area} against ${theirs}`).toBeLessThanOrEqual(slack)
      }
    })
  }
}
