import { difference } from '../geometry/boolean/index.ts'
import type { Region } from '../geometry/shape/contour.ts'
import { isPlaced, type Placed } from './feature.ts'
import type { Solid } from './part.ts'

/**
 * The front as it is when every notch is cut and every bevel that makes it shorter, usually one region: what is sawn
 * to where the front lies on top. A bevel that makes the back shorter, a rebate or an eased arris leaves the edge of
 * the front, or the line where it was, as it is.
 */
export function finishedOutline(solid: Solid): readonly Region[] {
  return without(solid, ({ face, shape }) =>
    shape.kind === 'edge-cut' || (shape.kind === 'bevel' && face === 'front') ? [shape.region] : [],
  )
}

/** All that is seen of the part from the front when it is finished: as the front, and where the back is longer, that. */
export function silhouette(solid: Solid): readonly Region[] {
  return without(solid, ({ shape }) => (shape.kind === 'edge-cut' ? [shape.region] : []))
}

/**
 * Where the kernel cannot take something away, which its fuzzing never met, it stands beside the whole outline, so
 * that no line to cut to is lost.
 */
function without(solid: Solid, taken: (feature: Placed) => readonly Region[]): readonly Region[] {
  const waste = solid.features.filter(isPlaced).flatMap(taken)
  if (waste.length === 0) return [solid.outline]
  const cut = difference([solid.outline], waste)
  return cut.ok ? cut.value : [solid.outline, ...waste]
}
