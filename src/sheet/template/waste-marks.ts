import { linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { intersection, union } from '../../geometry/boolean/index.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import type { Placed } from '../../model/feature.ts'
import { boxAbout } from '../label/find-place.ts'
import { hatch } from './hatch.ts'
import { crossReach } from './hole-marks.ts'

/**
 * Hatching on what is cut away: slots, mortises and notches, as far as they lie on the wood. It spares lettering
 * and holes. Nothing where the waste cannot be worked out, since the lines to cut to stand without it.
 */
export function wasteMarks(
  seen: readonly Placed[],
  wood: Region,
  lettering: readonly Bounds[],
): readonly Mark[] {
  const waste = union(seen.flatMap(({ shape }) => (shape.kind === 'bore' ? [] : [shape.region])))
  if (!waste.ok || waste.value.length === 0) return []
  const onWood = intersection(waste.value, [wood])
  if (!onWood.ok) return []
  const lines = hatch(onWood.value, [...lettering, ...seen.flatMap(crossBox)])
  return lines.length === 0 ? [] : [linesMark({ layer: 'text', subject: 'waste' }, 'thin', lines)]
}

function crossBox({ shape }: Placed): readonly Bounds[] {
  if (shape.kind !== 'bore') return []
  const side = 2 * crossReach(shape.diameter.mm / 2)
  return [boxAbout(shape.centre, { width: side, height: side })]
}
