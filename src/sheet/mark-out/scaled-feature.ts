import { apply, scale } from '../../geometry/shape/matrix.ts'
import { transformContour, transformRegion } from '../../geometry/shape/transform.ts'
import type { Placed } from '../../model/feature.ts'
import type { Size } from '../../model/size.ts'

/** A cut as it is drawn at another scale; only what its lines are made from is scaled. */
export function scaledFeature(feature: Placed, factor: number): Placed {
  if (factor === 1) return feature
  const { shape } = feature
  const by = scale(factor)
  const size = (given: Size): Size => ({ ...given, mm: given.mm * factor })
  switch (shape.kind) {
    case 'bore': {
      const { mouth } = shape
      const wider = mouth && { mouth: { ...mouth, diameter: size(mouth.diameter) } }
      return {
        ...feature,
        shape: { ...shape, centre: apply(by, shape.centre), diameter: size(shape.diameter), ...wider },
      }
    }
    case 'cut-out': {
      const { entry } = shape
      const moved = entry && {
        entry: { ...entry, centre: apply(by, entry.centre), diameter: entry.diameter * factor },
      }
      return { ...feature, shape: { ...shape, region: transformRegion(shape.region, by), ...moved } }
    }
    case 'engraved-lines':
      return { ...feature, shape: { ...shape, paths: shape.paths.map(path => transformContour(path, by)) } }
    case 'engraved-text':
      return { ...feature, shape: { ...shape, at: apply(by, shape.at), height: size(shape.height) } }
    default:
      return { ...feature, shape: { ...shape, region: transformRegion(shape.region, by) } }
  }
}
