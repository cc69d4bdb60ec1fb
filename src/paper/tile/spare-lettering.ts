import { moveMark } from '../../drawing/transform-mark.ts'
import { sharedArea, shiftBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { holds } from './cut-marks.ts'
import type { MeasuredMark } from './measured-mark.ts'
import { clearance } from './spare.ts'
import type { Tile } from './tiling.ts'

/**
 * Lettering that no tile shows whole is moved, no farther than it takes, to where one does: clear of the seams where it
 * is not too long for that, and of other lettering where there is such a place; the tile that shows the most of it comes
 * first. The rest stays where it is.
 */
export function spareLettering(
  marks: readonly MeasuredMark[],
  tiles: readonly Tile[],
): readonly MeasuredMark[] {
  const lettering = marks.map(({ mark, box }) => (mark.kind === 'text' ? box : undefined))
  return marks.map((measured, i) => {
    const { mark, box } = measured
    if (mark.kind !== 'text' || tiles.some(({ window }) => holds(window, box))) return measured
    const places = tiles
      .map(tile => ({ tile, shown: sharedArea(tile.window, box) }))
      .sort((a, b) => b.shown - a.shown)
      .map(({ tile }) => movedInto(box, roomOn(tile, box)))
    const free = places.find(place =>
      lettering.every((other, k) => k === i || other === undefined || sharedArea(place, other) === 0),
    )
    const place = free ?? places[0]!
    lettering[i] = place
    return { ...measured, mark: moveMark(mark, place.left - box.left, place.bottom - box.bottom), box: place }
  })
}

/** What of a tile lies clear of its seams; all of it for what is too long for that. */
function roomOn({ cell, window }: Tile, box: Bounds): Bounds {
  const aside = (side: keyof Bounds, inward: 1 | -1): number =>
    cell[side] === window[side] ? cell[side] : cell[side] + inward * clearance
  const clear = {
    left: aside('left', 1),
    right: aside('right', -1),
    bottom: aside('bottom', 1),
    top: aside('top', -1),
  }
  const fits = (low: 'left' | 'bottom', high: 'right' | 'top'): boolean =>
    box[high] - box[low] <= clear[high] - clear[low]
  return {
    ...(fits('left', 'right') ? clear : window),
    ...(fits('bottom', 'top')
      ? { bottom: clear.bottom, top: clear.top }
      : { bottom: window.bottom, top: window.top }),
  }
}

function movedInto(box: Bounds, room: Bounds): Bounds {
  const by = (low: 'left' | 'bottom', high: 'right' | 'top'): number =>
    box[low] < room[low] ? room[low] - box[low] : box[high] > room[high] ? room[high] - box[high] : 0
  const [x, y] = [by('left', 'right'), by('bottom', 'top')]
  return shiftBounds(box, x, y)
}
