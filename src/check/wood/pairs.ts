import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Box3 } from '../../geometry/solid/box3.ts'
import { nearAmong } from '../../geometry/solid/near-boxes.ts'
import { areSeenTogether, type Cut } from '../subject/cut.ts'

/**
 * The pairs of cuts whose boxes come as near to each other as `reach`, and that a face shows together, each once, in
 * the order of the cuts. The time grows with the pairs that are near and not with all.
 */
export function nearPairs<C extends Cut>(
  cuts: readonly C[],
  reach: number,
): readonly (readonly [first: C, second: C])[] {
  return nearAmong(
    cuts.map(({ bounds }) => flat(bounds)),
    reach,
  )
    .map(([i, j]) => [cuts[i]!, cuts[j]!] as const)
    .filter(([a, b]) => areSeenTogether(a, b))
}

function flat({ left, right, bottom, top }: Bounds): Box3 {
  return { low: { x: left, y: bottom, z: 0 }, high: { x: right, y: top, z: 0 } }
}
