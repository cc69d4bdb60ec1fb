import { lettering } from '../../drawing/lettering.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Board } from '../label/board.ts'
import { label } from '../label/place-text.ts'
import { type BesidePoint, putBesidePoints } from '../put-beside-points.ts'
import type { Note } from './notes.ts'

/** Puts each note beside its line, with a leader where it stands off. Returns what found no room. */
export function putNotes(notes: readonly Note[], board: Board, area: Bounds, fonts: Fonts): readonly Note[] {
  const labels = notes.map(({ at, words }): BesidePoint => {
    const { extent, markAt } = label(fonts, words, lettering.large, 'note')
    return { at, extent, marksAt: middle => [markAt(middle)] }
  })
  const put = putBesidePoints(labels, { layer: 'dimension', subject: 'note' }, board, area)
  return notes.filter((_, i) => !put[i])
}
