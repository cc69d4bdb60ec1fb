import { lettering } from '../../drawing/lettering.ts'
import { linesMark } from '../../drawing/make-mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Board } from '../label/board.ts'
import { choosePlaces } from '../label/choose-places.ts'
import { label } from '../label/place-text.ts'
import { letterPlaces } from '../template/letter-places.ts'
import type { Note } from './notes.ts'

/** Puts each note beside its line, all chosen together, with a leader where it stands off. Returns what found no room. */
export function putNotes(notes: readonly Note[], board: Board, area: Bounds, fonts: Fonts): readonly Note[] {
  const labels = notes.map(({ words }) => label(fonts, words, lettering.large, 'note'))
  const places = choosePlaces(
    notes.map(({ at }, i) =>
      letterPlaces({ kind: 'point', at }, () => false, labels[i]!.extent, area, board.obstacles),
    ),
  )
  places.forEach((place, i) => {
    if (place === undefined) return
    board.put([labels[i]!.markAt(place.middle)], place.box)
    if (place.leader !== undefined)
      board.draw([linesMark({ layer: 'dimension', subject: 'note' }, 'thin', [place.leader])])
  })
  return notes.filter((_, i) => places[i] === undefined)
}
