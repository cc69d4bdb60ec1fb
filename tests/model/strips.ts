import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import type { Part } from '../../src/model/part.ts'

export function box(left: number, bottom: number, right: number, top: number): Bounds {
  return { left, bottom, right, top }
}

/** Bounds to a millionth of a micrometre, for what was calculated along two ways. */
export function rounded(bounds: Bounds): object {
  return Object.fromEntries(Object.entries(bounds).map(([key, value]) => [key, Number(value.toFixed(9)) + 0]))
}

/** The only feature of a part, and the rectangle that it takes on its face. */
export function seen(part: Part) {
  const [feature, ...others] = part.drawn.features
  if (others.length > 0 || feature === undefined || !('region' in feature.shape)) throw new Error('not one')
  return { feature, region: feature.shape.region, bounds: rounded(regionBounds(feature.shape.region)) }
}
