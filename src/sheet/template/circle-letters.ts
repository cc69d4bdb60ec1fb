import { lettering } from '../../drawing/lettering.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Fonts } from '../../text/fonts.ts'
import { outwardOf } from '../circle-of-holes.ts'
import { grouped } from '../grouped.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import type { Board } from '../label/board.ts'
import { choosePlaces } from '../label/choose-places.ts'
import { label } from '../label/place-text.ts'
import { linesOfAnother } from './letter-marks.ts'
import { letterPlaces } from './letter-places.ts'
import { targetOf } from './letter-target.ts'

/** Whoever bores more holes than this has them in a dividing head, and letters round them would be a wreath. */
const mostHoles = 24

/**
 * Gives the other holes of a circle, whose first has its letter, letters too, where the part has holes of another kind that
 * they might be taken for: outside the circle or inside, near their holes and without leaders, at all of them or at none.
 * After everything that has to stand, since nothing is missing without them.
 */
export function putCircleLetters(
  key: readonly KeyEntry[],
  part: string,
  board: Board,
  area: Bounds,
  fonts: Fonts,
): void {
  if (key.length < 2) return
  for (const { letter, members } of key) {
    const { extent, markAt } = label(fonts, [letter], lettering.large, part, { weight: 'bold' })
    const circles = grouped(
      members.filter(({ row }) => row?.pattern === 'circle'),
      ({ cut }) => cut,
    )
    for (const holes of circles.values()) {
      if (holes.length > mostHoles) continue
      const others = holes.filter(({ row }) => row!.number > 1)
      const places = choosePlaces(
        others.map(hole =>
          letterPlaces(
            targetOf(hole, fonts),
            linesOfAnother(part, hole),
            extent,
            area,
            board.obstacles,
            outwardOf(hole, holes),
          ).filter(({ certain }) => certain),
        ),
      )
      const found = places.flatMap(place => place ?? [])
      if (found.length < others.length) continue
      for (const { middle, box } of found) board.put([markAt(middle)], box)
    }
  }
}
