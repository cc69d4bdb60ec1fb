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
import { isCrossed } from '../label/clear-space.ts'
import { boxAbout, type Extent } from '../label/find-place.ts'
import { label } from '../label/place-text.ts'
import { crossReach } from './hole-marks.ts'

/** Puts each letter of the key at what it stands for; of a row at its first and last hole. Returns what found no room for its letter. */
export function putLetters(
  key: readonly KeyEntry[],
  board: Board,
  area: Bounds,
  fonts: Fonts,
): readonly Placed[] {
  const homeless: Placed[] = []
  for (const { letter, members } of key) {
    const lettered = members.filter(
      ({ row }) => row === undefined || row.number === 1 || row.number === row.count,
    )
    for (const feature of lettered)
      if (!putLetter(letter, feature, board, area, fonts)) homeless.push(feature)
  }
  return homeless
}

function putLetter(letter: string, { shape, id }: Placed, board: Board, area: Bounds, fonts: Fonts): boolean {
  const { extent, markAt } = label(fonts, [letter], lettering.large, id, { weight: 'bold' })
  const target: Target =
    shape.kind === 'bore'
      ? { kind: 'ring', centre: shape.centre, radius: shape.diameter.mm / 2 }
      : { kind: 'box', box: regionBounds(shape.region) }
  const box = target.kind === 'box' ? target.box : aboutBore(target.centre, target.radius)
  const marksAt = (middle: Point): readonly Mark[] => {
    const leader = leaderTo(target, boxAbout(middle, extent))
    return leader === undefined
      ? [markAt(middle)]
      : [markAt(middle), linesMark({ layer: 'text', subject: id }, 'thin', [leader])]
  }
  const leaderIsFree =
    (ofLines: boolean) =>
    (middle: Point): boolean => {
      const leader = leaderTo(target, boxAbout(middle, extent))
      return leader === undefined || !isCrossed(leader, board.obstacles, ofLines)
    }
  const inside = target.kind === 'box' ? [middleOf(box)] : []
  // a leader that crosses a line is better than a letter that is missing; one that crosses lettering is not
  const middles = [...inside, ...around(box, extent)]
  return [true, false].some(
    ofLines => board.place(middles, extent, area, marksAt, leaderIsFree(ofLines)) !== undefined,
  )
}

/** What a letter belongs to. */
type Target =
  | { readonly kind: 'ring'; readonly centre: Point; readonly radius: number }
  | { readonly kind: 'box'; readonly box: Bounds }

/** The square in the ring, so that a letter on the diagonal comes near to it. */
function aboutBore(centre: Point, radius: number): Bounds {
  const half = radius * Math.SQRT1_2
  return boxAbout(centre, { width: 2 * half, height: 2 * half })
}

function middleOf(box: Bounds): Point {
  return { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 }
}

/** How far from its hole or slot a letter may stand, in steps; from the second on it gets a leader. */
const distances = [1.1, 2.5, 4.5, 7, 10, 14] as const

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

/** A line from what a letter belongs to, free of it, to the letter that stands off; none where that stands near. */
function leaderTo(target: Target, letter: Bounds): readonly [Point, Point] | undefined {
  const near = middleOf(letter)
  const aim = target.kind === 'ring' ? target.centre : nearestIn(target.box, near)
  const end = nearestIn(letter, aim)
  const away = Math.hypot(end.x - aim.x, end.y - aim.y)
  const start = target.kind === 'ring' ? crossReach(target.radius) + leaderGap : leaderGap
  const length = away - start - leaderGap
  // a short line in the direction of a cross would be taken for its arm
  const inLine = target.kind === 'ring' && (end.x === aim.x || end.y === aim.y)
  if (length < (inLine ? shortestInLine : shortestLeader)) return undefined
  const at = (distance: number): Point => ({
    x: aim.x + ((end.x - aim.x) / away) * distance,
    y: aim.y + ((end.y - aim.y) / away) * distance,
  })
  return [at(start), at(away - leaderGap)]
}

/** White at both ends of a leader. */
const leaderGap = 0.4
/** A letter that stands nearer than this needs no line to say where it belongs. */
const shortestLeader = 1.5
const shortestInLine = 4

function nearestIn(box: Bounds, p: Point): Point {
  return { x: Math.min(Math.max(p.x, box.left), box.right), y: Math.min(Math.max(p.y, box.bottom), box.top) }
}
