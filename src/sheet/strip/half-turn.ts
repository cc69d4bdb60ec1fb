import type { Mark } from '../../drawing/mark.ts'
import { transformMark } from '../../drawing/transform-mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { quarterTurns } from '../../geometry/shape/matrix.ts'

const half = quarterTurns(2)

/** A mark turned upside down about x = 0, y = 0, its lettering too. */
export function halfTurned(mark: Mark): Mark {
  return transformMark(mark, half)
}

export function halfTurnedBox({ left, right, bottom, top }: Bounds): Bounds {
  return { left: -right, right: -left, bottom: -top, top: -bottom }
}
