import { lettering } from '../../drawing/lettering.ts'
import { linesMark, pathMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { sharedArea } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { distance, type Point } from '../../geometry/shape/point.ts'
import { polygon } from '../../geometry/shape/polygon.ts'
import type { Seam } from './seams.ts'
import { grown } from './spare.ts'
import type { Taken } from './taken.ts'

const belongs = { layer: 'paper', subject: 'seam' } as const

/** From the middle of a match mark to its corners. Smaller, and half of it is hard to see; larger, and it needs more overlap. */
const reach = 3.5
/** From the seam to the middle of a mark's letters, clear of its corner. */
const letterAside = 5.2
/** White beside a mark, and how far its letters reach from their middle, white included. */
const white = 0.5
const letterReach = 2
/** From the end of a seam to the middle of a mark at the least: all of it stands on the stretch that both pages show. */
const fromEnd = reach + 1

/**
 * What two pages are joined by: the seam as a fold line, and on it marks in pairs. Each is a diamond that the seam cuts
 * in two, with a stroke through it and the same letter on both sides: the page on top is cut or folded at the seam and
 * shifted until both halves make one diamond again. No letter comes twice in a drawing and neighbours stand far
 * apart, so that a page that lies a millimetre off still meets the right half.
 *
 *        a ◇ a
 *
 * Letters stand upright on a page on which the drawing is `turned`. Marks keep clear of each other, and of what is
 * `taken`, where they can; where they cannot, they do the least harm. The result has the marks of each seam.
 */
export function matchMarks(
  seams: readonly Seam[],
  taken: readonly Taken[],
  turned: boolean,
): readonly (readonly Mark[])[] {
  let count = 0
  const occupied = [...taken]
  return seams.map(seam => {
    const middles = middlesOn(seam, occupied)
    occupied.push(...middles.flatMap(middle => boxesOf(middle, seam)).map(box => ({ box, harm: ofMark })))
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
function middlesOn(seam: Seam, occupied: readonly Taken[]): readonly Point[] {
  const { from, to } = seam
  const length = distance(from, to)
  const at = (d: number): Point => ({
    x: from.x + (d / length) * (to.x - from.x),
    y: from.y + (d / length) * (to.y - from.y),
  })
  const wanted = length < 40 ? [0.5] : length < 140 ? [0.15, 0.85] : [0.1, 0.5, 0.9]
  // what each mark has to itself: the whole of a seam with one, and so much of others that marks stay far apart
  const room = length * (wanted.length === 1 ? 0.5 : 0.75 / (wanted.length + 1))
  const along = bandOf(seam)
  const near = occupied.filter(({ box }) => sharedArea(box, along) > 0)
  return wanted.map(share => {
    const within = (d: number): number => Math.min(Math.max(d, fromEnd), length - fromEnd)
    const wish = within(share * length)
    const harmAt = (d: number): number => {
      const boxes = boxesOf(at(d), seam)
      return near.reduce(
        (sum, { box, harm }) => sum + boxes.reduce((area, own) => area + sharedArea(box, own), 0) * harm,
        Math.abs(d - wish) * ofShift,
      )
    }
    const steps = Array.from({ length: Math.floor(room / step) }, (_, i) => (i + 1) * step)
    const tries = [wish, ...steps.flatMap(s => [within(wish + s), within(wish - s)])]
    return at(leastOf(tries, harmAt))
  })
}

/** Marks are shifted along their seam by this much at a time. */
const step = 0.5
/** Every millimetre from where a mark is best for the join does so much harm: less than a line under it. */
const ofShift = 0.01
/** One mark on another is as bad as one on letters. */
const ofMark = 10

/** The first of those that cost the least. */
function leastOf(list: readonly number[], costOf: (d: number) => number): number {
  let best = list[0]!
  let least = Infinity
  for (const d of list) {
    const cost = costOf(d)
    if (cost < least) {
      best = d
      least = cost
    }
  }
  return best
}

/** What a mark takes, white included: its diamond, and the letter on either side. */
function boxesOf(middle: Point, seam: Seam): readonly Bounds[] {
  const upright = seam.from.x === seam.to.x
  const box = (aside: number, by: number): Bounds => {
    const x = middle.x + (upright ? aside : 0)
    const y = middle.y + (upright ? 0 : aside)
    return grown({ left: x, right: x, bottom: y, top: y }, by)
  }
  return [box(0, reach + white), box(letterAside, letterReach), box(-letterAside, letterReach)]
}

/** All that marks on a seam can take. */
function bandOf({ from, to }: Seam): Bounds {
  const ends = {
    left: Math.min(from.x, to.x),
    right: Math.max(from.x, to.x),
    bottom: Math.min(from.y, to.y),
    top: Math.max(from.y, to.y),
  }
  return grown(ends, letterAside + letterReach)
}

/** Small letters, since capitals stand for what is cut; without i, l and o, which are read as figures. */
const alphabet = 'abcdefghjkmnpqrstuvwxyz'

/** a to z, then aa, ab and so on. */
export function letterOf(index: number): string {
  const last = alphabet[index % alphabet.length]!
  const before = Math.floor(index / alphabet.length)
  return before === 0 ? last : letterOf(before - 1) + last
}
