import { offsetRegions } from '../../geometry/offset/offset.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import type { Placed } from '../../model/feature.ts'
import type { Part } from '../../model/part.ts'

/**
 * The line that the bush of a router runs along, so that the bit cuts the part: inside the part's edge all round, by
 * half of what the bush is wider than the bit. The outline itself where there is no such template, or where nothing
 * would be left of it.
 *
 * Source: offset = (bush − bit)/2, tables of guide bushes: 30 and 10 mm give 10 mm, 3/4 and 1/2 in give 1/8.
 */
export function guided(outline: readonly Region[], { templateOffset }: Part): readonly Region[] {
  if (templateOffset === undefined) return outline
  const inset = offsetRegions(outline, -templateOffset.mm)
  return inset.ok && inset.value.length > 0 ? inset.value : outline
}

/** The same for a slot or a cut-out: its line lies as far outside what is to be cut away. */
export function guidedCut(feature: Placed, { templateOffset }: Part): Placed {
  const { shape } = feature
  if (templateOffset === undefined || (shape.kind !== 'pocket' && shape.kind !== 'cut-out')) return feature
  const grown = offsetRegions([shape.region], templateOffset.mm)
  const region = grown.ok ? grown.value[0] : undefined
  return region === undefined ? feature : { ...feature, shape: { ...shape, region } }
}
