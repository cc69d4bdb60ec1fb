import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Placed } from '../../model/feature.ts'

export function wasteMarks(_seen: readonly Placed[], _spared: readonly Bounds[]): readonly Mark[] {
  return []
}
