import { lettering } from '../../drawing/lettering.ts'
import { linesMark } from '../../drawing/make-mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Placed } from '../../model/feature.ts'
import type { Fonts } from '../../text/fonts.ts'
import { outwardOf } from '../circle-of-holes.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import type { Board } from '../label/board.ts'
import { choosePlaces } from '../label/choose-places.ts'
import type { Edge } from '../label/obstacles.ts'
import { label } from '../label/place-text.ts'
import { letterPlaces } from './letter-places.ts'
import { targetOf } from './letter-target.ts'

/** A cut that has no letter beside it for want of room, and the letter that it would have. */
export type Unlettered = { readonly letter: string; readonly feature: Placed }

/**
 * Puts each letter of the key at what it stands for, all of them chosen together. Returns what found no room for its
 * letter. `part` is the id that the subjects of the cuts' lines begin with.
 */
export function putLetters(
  key: readonly KeyEntry[],
  part: string,
  board: Board,
  area: Bounds,
  fonts: Fonts,
): readonly Unlettered[] {
  const wanted = key.flatMap(({ letter, members }) =>
    members.filter(isLettered).map(feature => ({ letter, feature, outward: outwardOf(feature, members) })),
  )
  const labels = wanted.map(({ letter, feature }) =>
    label(fonts, [letter], lettering.large, feature.id, { weight: 'bold' }),
  )
  const places = choosePlaces(
    wanted.map(({ feature, outward }, i) =>
      letterPlaces(
        targetOf(feature, fonts),
        linesOfAnother(part, feature),
        labels[i]!.extent,
        area,
        board.obstacles,
        outward,
      ),
    ),
  )
  places.forEach((place, i) => {
    if (place === undefined) return
    const { middle, box, leader } = place
    board.put([labels[i]!.markAt(middle)], box)
    if (leader !== undefined)
      board.draw([linesMark({ layer: 'text', subject: wanted[i]!.feature.id }, 'thin', [leader])])
  })
  return wanted.filter((_, i) => places[i] === undefined).map(({ letter, feature }) => ({ letter, feature }))
}

/** Tells the lines of all cuts but one; the outline is no cut's. */
export function linesOfAnother(part: string, { id }: Placed): (edge: Edge) => boolean {
  const own = `${part}.${id}`
  return ({ subject = '' }) =>
    subject.startsWith(`${part}.`) && subject !== own && !subject.startsWith(`${own}.`)
}

/** Of a row or a grid the first hole and the last have letters, of a circle of holes the first; the others where there is room to spare. */
function isLettered({ row }: Placed): boolean {
  if (row === undefined || row.number === 1) return true
  return row.pattern !== 'circle' && row.number === row.count
}
