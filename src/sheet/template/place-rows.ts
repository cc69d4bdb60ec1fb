import { plain, type Words } from '../../text/words.ts'
import type { PlaceRow } from '../key/place-table.ts'
import type { SheetContext } from '../sheet.ts'
import { showSize } from '../show-size.ts'
import { fromDatums } from './from-datums.ts'
import type { Unlettered } from './letter-marks.ts'
import type { Served } from './pieces-served.ts'

/**
 * Where to find what has no letter beside it: a row for each letter and distance from the face edge, as a gauge is
 * set, with all the distances from the reference end along that line.
 */
export function placeRows(
  unlettered: readonly Unlettered[],
  served: Served,
  { model }: SheetContext,
): readonly PlaceRow[] {
  const shown = (mm: number) => showSize({ mm, basis: 'derived' }, model)
  const places = unlettered
    .map(({ letter, feature }) => ({ letter, ...fromDatums(feature, served) }))
    .sort((a, b) => a.faceEdge - b.faceEdge || a.referenceEnd - b.referenceEnd)
  return [...new Set(unlettered.map(({ letter }) => letter))].flatMap(letter => {
    const lines = new Map<string, { faceEdge: Words; along: number[] }>()
    for (const place of places.filter(p => p.letter === letter)) {
      const faceEdge = shown(place.faceEdge)
      const line = lines.get(plain(faceEdge)) ?? { faceEdge, along: [] }
      line.along.push(place.referenceEnd)
      lines.set(plain(faceEdge), line)
    }
    return [...lines.values()].map(({ faceEdge, along }) => ({
      letter,
      faceEdge,
      referenceEnd: along.sort((a, b) => a - b).map(shown),
    }))
  })
}
