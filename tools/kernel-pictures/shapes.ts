import { easeCorners } from '../../src/geometry/construct/corner.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import type { Region } from '../../src/geometry/shape/contour.ts'
import { shift } from '../../src/geometry/shape/matrix.ts'
import type { Outcome } from '../../src/geometry/shape/outcome.ts'
import { polygon } from '../../src/geometry/shape/polygon.ts'
import { slot } from '../../src/geometry/shape/slot.ts'
import { transformRegion } from '../../src/geometry/shape/transform.ts'

/** The value, or an end to the program: a picture of a fault is no picture. */
export function given<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`${outcome.fault.operation}: ${outcome.fault.reason}`)
  return outcome.value
}

/** A lever plate with rounded corners and a hole, the example of most pictures. */
export function plate(): Region {
  const corners = [
    { x: 0, y: 0 },
    { x: 62, y: 0 },
    { x: 62, y: 16 },
    { x: 34, y: 16 },
    { x: 34, y: 44 },
    { x: 0, y: 44 },
  ]
  const names = ['foot', 'tip', 'ledge', 'cheek', 'head', 'back']
  const outline = polygon(corners, names)
  const eased = given(
    easeCorners(outline, [
      undefined,
      { radius: 6 },
      { radius: 6 },
      { radius: 9 },
      { chamfer: 8 },
      { radius: 12 },
    ]),
  )
  return { outer: eased, holes: [circle({ x: 15, y: 28 }, 7)] }
}

/** What is laid over the plate in the pictures of booleans. */
export function bar(): Region {
  return slot({ x: 16, y: 4 }, { x: 52, y: 34 }, 20)
}

export function moved(region: Region, x: number, y: number): Region {
  return transformRegion(region, shift(x, y))
}
