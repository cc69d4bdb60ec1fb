import { difference } from '../geometry/boolean/index.ts'
import type { Region } from '../geometry/shape/contour.ts'
import { isPlaced } from './feature.ts'
import type { Solid } from './part.ts'

/**
 * The front as it is when every notch is cut, usually one region. Where the kernel cannot take a notch away, which
 * its fuzzing never met, the notches stand beside the whole outline, so that no line to cut to is lost.
 */
export function finishedOutline(solid: Solid): readonly Region[] {
  const notches = solid.features
    .filter(isPlaced)
    .flatMap(({ shape }) => (shape.kind === 'edge-cut' ? [shape.region] : []))
  if (notches.length === 0) return [solid.outline]
  const cut = difference([solid.outline], notches)
  return cut.ok ? cut.value : [solid.outline, ...notches]
}
