import { difference } from '../geometry/boolean/index.ts'
import type { Region } from '../geometry/shape/contour.ts'
import { isPlaced } from './feature.ts'
import type { Solid } from './part.ts'

/**
 * The front as it is when every notch is cut, usually one region. Where the kernel cannot take a notch away, which
 * its fuzzing never met, the outline is given as it was before: the notch is then still listed, and its absence is
 * plain to see.
 */
export function finishedOutline(solid: Solid): readonly Region[] {
  const notches = solid.features
    .filter(isPlaced)
    .flatMap(({ shape }) => (shape.kind === 'edge-cut' ? [shape.region] : []))
  if (notches.length === 0) return [solid.outline]
  const cut = difference([solid.outline], notches)
  return cut.ok ? cut.value : [solid.outline]
}
