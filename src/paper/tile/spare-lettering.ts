import type { Text } from '../../drawing/mark.ts'
import { moveMark } from '../../drawing/transform-mark.ts'
import { sharedArea, shiftBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { holds } from './cut-marks.ts'
import type { MeasuredMark } from './measured-mark.ts'
import { clearance } from './spare.ts'
import type { Tile } from './tile.ts'

/** The marks of a drawing with their lettering where tiles show it whole: how many lines were moved, and how many of these are hard to read all the same: on others, or longer than a tile. */
export type SparedLettering = {
  readonly marks: readonly MeasuredMark[]
  readonly moved: number
  readonly spoilt: number
}

/**
 * Lettering that no tile shows whole is moved, no farther than it takes, to where one does: clear of the seams where it
 * is not too long for that, and of other lettering, beside which it is put if need be; the tile that shows the most of
 * it comes first. Where no place is free it covers as little as it can. The rest stays where it is.
 */
export function spareLettering(marks: readonly MeasuredMark[], tiles: readonly Tile[]): SparedLettering {
  const lettering = marks.map(({ mark, box }) => (mark.kind === 'text' ? box : undefined))
  let [moved, spoilt] = [0, 0]
  const spared = marks.map((measured, i) => {
    const { mark, box } = measured
    if (mark.kind !== 'text' || tiles.some(({ window }) => holds(window, box))) return measured
    const others = lettering.flatMap((other, k) => (k === i || other === undefined ? [] : [other]))
    const covered = (place: Bounds): number =>
      others.reduce((sum, other) => sum + sharedArea(place, other), 0)
    const places = tiles
      .map(tile => ({ tile, shown: sharedArea(tile.window, box) }))
      .sort((a, b) => b.shown - a.shown)
      .flatMap(({ tile }) => placesOn(roomOn(tile, box), box, mark, others))
    const place =
      places.find(tried => covered(tried) === 0) ??
      places.reduce((best, tried) => (covered(tried) < covered(best) ? tried : best))
    lettering[i] = place
    moved++
    if (covered(place) > 0 || !tiles.some(({ window }) => holds(window, place))) spoilt++
    return { ...measured, mark: moveMark(mark, place.left - box.left, place.bottom - box.bottom), box: place }
  })
  return { marks: spared, moved, spoilt }
}

/** Where lettering may stand in a room: moved no farther than it takes, else along its line to beside other lettering, the nearest first. */
function placesOn(
  room: Bounds,
  box: Bounds,
  { angle }: Pick<Text, 'angle'>,
  others: readonly Bounds[],
): readonly Bounds[] {
  const first = movedInto(box, room)
  const isUpright = Math.abs(Math.sin(angle)) > Math.SQRT1_2
  const [low, high] = isUpright ? (['bottom', 'top'] as const) : (['left', 'right'] as const)
  const beside = others
    .flatMap(other => [other[high] + clearance - first[low], other[low] - clearance - first[high]])
    .sort((a, b) => Math.abs(a) - Math.abs(b))
    .map(by => shiftBounds(first, isUpright ? 0 : by, isUpright ? by : 0))
  return [first, ...beside.filter(place => holds(room, place))]
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
