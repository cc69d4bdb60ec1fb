import { lettering } from '../../drawing/lettering.ts'
import { linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Placed } from '../../model/feature.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import type { Board } from '../label/board.ts'
import { boxAbout, clearance, type Extent } from '../label/find-place.ts'
import { label } from '../label/place-text.ts'

/** Puts each letter of the key at what it stands for; of a row at its first and last hole. Returns the letters that found no room. */
export function putLetters(
  key: readonly KeyEntry[],
  board: Board,
  area: Bounds,
  fonts: Fonts,
): readonly string[] {
  const homeless: string[] = []
  for (const { letter, members } of key) {
    const lettered = members.filter(
      ({ row }) => row === undefined || row.number === 1 || row.number === row.count,
    )
    for (const feature of lettered) if (!putLetter(letter, feature, board, area, fonts)) homeless.push(letter)
  }
  return homeless
}

function putLetter(letter: string, { shape, id }: Placed, board: Board, area: Bounds, fonts: Fonts): boolean {
  const { extent, markAt } = label(fonts, [letter], lettering.large, id, { weight: 'bold' })
  const box =
    shape.kind === 'bore' ? aboutBore(shape.centre, shape.diameter.mm / 2) : regionBounds(shape.region)
  const inside = shape.kind === 'bore' ? [] : [middleOf(box)]
  const withLeader = (middle: Point): readonly Mark[] => {
    const leader = leaderTo(box, boxAbout(middle, extent))
    return leader === undefined
      ? [markAt(middle)]
      : [markAt(middle), linesMark({ layer: 'text', subject: id }, 'thin', [leader])]
  }
  return board.place([...inside, ...around(box, extent)], extent, area, withLeader) !== undefined
}

/** The square in the ring, so that a letter on the diagonal comes near to it. */
function aboutBore(centre: Point, radius: number): Bounds {
  const half = radius * Math.SQRT1_2
  return boxAbout(centre, { width: 2 * half, height: 2 * half })
}

function middleOf(box: Bounds): Point {
  return { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 }
}

/** How far from its hole or slot a letter may stand, in steps; from the second on it gets a leader. */
const distances = [0.8, 2.5, 4.5, 7, 10, 14] as const

/** Middles round a box, the nearest first; the diagonals before the sides, since the lines of a cross run there. */
function* around(box: Bounds, { width, height }: Extent): Generator<Point> {
  const middle = middleOf(box)
  for (const away of distances) {
    const x = (box.right - box.left) / 2 + away + width / 2
    const y = (box.top - box.bottom) / 2 + away + height / 2
    for (const [dx, dy] of [
      [1, 1],
      [-1, 1],
      [1, -1],
      [-1, -1],
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      yield { x: middle.x + dx * x, y: middle.y + dy * y }
    }
  }
}

/** A line from a letter that stands off to the nearest point of what it belongs to. */
function leaderTo(target: Bounds, letter: Bounds): readonly [Point, Point] | undefined {
  const clamp = (v: number, low: number, high: number): number => Math.min(Math.max(v, low), high)
  const near = middleOf(letter)
  const to = { x: clamp(near.x, target.left, target.right), y: clamp(near.y, target.bottom, target.top) }
  const from = { x: clamp(to.x, letter.left, letter.right), y: clamp(to.y, letter.bottom, letter.top) }
  return Math.hypot(to.x - from.x, to.y - from.y) > 2 * distances[0] + clearance ? [from, to] : undefined
}
