import { lettering } from '../../drawing/lettering.ts'
import { linesMark, pathMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { sharedArea } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { distance, type Point } from '../../geometry/shape/point.ts'
import { polygon } from '../../geometry/shape/polygon.ts'
import type { Seam } from './seams.ts'

const belongs = { layer: 'paper', subject: 'seam' } as const

/** From the middle of a match mark to its corners. Smaller, and half of it is hard to see; larger, and it needs more overlap. */
const reach = 3.5
/** From the seam to the middle of a mark's letters, clear of its corner. */
const letterAside = 5.2
/** What a mark takes along its seam and across it, to either side, white included. */
const half = { along: reach + 1, across: letterAside + 2 } as const

/**
 * What two pages are joined by: the seam as a fold line, and on it marks in pairs. Each is a diamond that the seam cuts
 * in two, with a stroke through it and the same letter on both sides: the page on top is cut or folded at the seam and
 * shifted until both halves make one diamond again. No letter comes twice in a drawing and neighbours stand far
 * apart, so that a page that lies a millimetre off still meets the right half.
 *
 *        a ◇ a
 *
 * Letters stand upright on a page on which the drawing is `turned`. Marks keep clear of each other, and of what is
 * `taken`, where they can; where they cannot, they cover as little of it as there is. The result has the marks of each seam.
 */
export function matchMarks(
  seams: readonly Seam[],
  taken: readonly Bounds[],
  turned: boolean,
): readonly (readonly Mark[])[] {
  let count = 0
  const occupied = [...taken]
  return seams.map(seam => {
    const middles = middlesOn(seam, occupied)
    occupied.push(...middles.map(middle => boxOf(middle, seam)))
    return [
      linesMark(belongs, 'fold', [[seam.from, seam.to]]),
      ...middles.flatMap(middle => matchMark(middle, seam, letterOf(count++), turned)),
    ]
  })
}

function matchMark(middle: Point, { from, to }: Seam, letter: string, turned: boolean): readonly Mark[] {
  const length = distance(from, to)
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  const at = (forth: number, aside: number): Point => ({
    x: middle.x + along.x * forth - along.y * aside,
    y: middle.y + along.y * forth + along.x * aside,
  })
  const diamond = polygon([at(reach, 0), at(0, reach), at(-reach, 0), at(0, -reach)])
  // the middle of a small letter is this far below the point that it stands about
  const drop = turned ? { x: -xHeight / 2, y: 0 } : { x: 0, y: -xHeight / 2 }
  const letters = [1, -1].map(side => {
    const about = at(0, side * letterAside)
    return textMark(belongs, [letter], { x: about.x + drop.x, y: about.y + drop.y }, lettering.medium, {
      align: 'middle',
      angle: turned ? -Math.PI / 2 : 0,
    })
  })
  return [
    pathMark(belongs, 'thin', [diamond]),
    linesMark(belongs, 'thin', [[at(0, reach), at(0, -reach)]]),
    ...letters,
  ]
}

/** Of the letters a, c, e and so on, at the height that match marks have. */
const xHeight = 0.74 * lettering.medium

/** Two marks on a seam near its ends, so that a page cannot turn; one in the middle of a short seam; three on a long one. */
function middlesOn(seam: Seam, occupied: readonly Bounds[]): readonly Point[] {
  const { from, to } = seam
  const length = distance(from, to)
  const at = (d: number): Point => ({
    x: from.x + (d / length) * (to.x - from.x),
    y: from.y + (d / length) * (to.y - from.y),
  })
  const wanted = length < 40 ? [0.5] : length < 140 ? [0.15, 0.85] : [0.1, 0.5, 0.9]
  const room = length / (2 * wanted.length + 1)
  return wanted.map(share => {
    // the whole mark stands on the stretch that both pages show
    const within = (d: number): number => Math.min(Math.max(d, half.along), length - half.along)
    const tries = shifts.map(s => at(within(share * length + s * room)))
    return leastOf(tries, p => occupied.reduce((sum, box) => sum + sharedArea(box, boxOf(p, seam)), 0))
  })
}

/** The first of those that cost the least. */
function leastOf(list: readonly Point[], costOf: (p: Point) => number): Point {
  let best = list[0]!
  let least = Infinity
  for (const p of list) {
    const cost = costOf(p)
    if (cost < least) {
      best = p
      least = cost
    }
    if (least === 0) break
  }
  return best
}

/** Shares of the room that a mark has to itself, the nearest first. */
const shifts = Array.from({ length: 17 }, (_, i) => ((i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2)) / 16)

function boxOf({ x, y }: Point, { from, to }: Seam): Bounds {
  const [across, along] = from.x === to.x ? [half.across, half.along] : [half.along, half.across]
  return { left: x - across, right: x + across, bottom: y - along, top: y + along }
}

/** Small letters, since capitals stand for what is cut; without i, l and o, which are read as figures. */
const alphabet = 'abcdefghjkmnpqrstuvwxyz'

/** a to z, then aa, ab and so on. */
export function letterOf(index: number): string {
  const last = alphabet[index % alphabet.length]!
  const before = Math.floor(index / alphabet.length)
  return before === 0 ? last : letterOf(before - 1) + last
}
