import { middleOfBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Candidate } from '../label/candidate.ts'
import { crossings, grown, isClear, meetsEdge, meetsLettering } from '../label/clear-space.ts'
import { boxAbout, clearance, type Extent, within } from '../label/find-place.ts'
import type { Edge, Obstacles } from '../label/obstacles.ts'
import { coreOf, insideOf, leaderTo, type Target } from './letter-target.ts'

/** `certain` where it stands near what it belongs to and near nothing else that is cut. */
export type LetterPlace = Candidate & { readonly middle: Point; readonly certain: boolean }

/** How far from its hole or slot a letter may stand, in steps; from the second on it gets a leader. */
const distances = [1.1, 2.5, 4.5, 7, 10, 14, 19] as const
/** The sides of a place, the diagonals before the others, since the lines of a cross run there. */
const directions = [
  [1, 1],
  [-1, 1],
  [1, -1],
  [-1, -1],
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
  [1, 0.5],
  [-1, 0.5],
  [1, -0.5],
  [-1, -0.5],
  [0.5, 1],
  [-0.5, 1],
  [0.5, -1],
  [-0.5, -1],
] as const
/** As many as this give the choice enough to choose from. */
const enough = 24
/** A leader that crosses a line is better than a letter that is missing; one that crosses many leads nowhere. */
const mostCrossed = 3
/** A letter that stands nearer than this to another cut might be taken for that one's. */
const confusing = 2.5

/** Nearer is better by this much a step; what else is worse counts in the same measure. */
const costs = { side: 0.01, inward: 1.2, step: 1, leader: 1, crossing: 4, confusing: 3.5 } as const

/**
 * Where the letter of a target can stand: within the area, clear of all lines and lettering. `ofAnother` tells the lines of
 * other cuts; `outward` is the unit vector to the side where it had best stand, if that is not all the same.
 */
export function letterPlaces(
  target: Target,
  ofAnother: (edge: Edge) => boolean,
  extent: Extent,
  area: Bounds,
  obstacles: Obstacles,
  outward?: Point,
): readonly LetterPlace[] {
  const placeAt = (middle: Point, cost: number): LetterPlace | undefined => {
    const box = boxAbout(middle, extent)
    const white = grown(box, clearance)
    if (!within(white, area) || !isClear(white, obstacles)) return undefined
    const leader = leaderTo(target, box)
    if (leader === undefined) {
      const confused = meetsEdge(grown(box, confusing), obstacles, ofAnother)
      return { middle, box, certain: !confused, cost: cost + (confused ? costs.confusing : 0) }
    }
    if (meetsLettering(leader, obstacles)) return undefined
    const crossed = crossings(leader, obstacles, mostCrossed + 1)
    if (crossed > mostCrossed) return undefined
    return {
      middle,
      box,
      leader,
      certain: false,
      cost: cost + costs.leader + crossed * costs.crossing,
    }
  }
  const inside = insideOf(target).flatMap(middle => placeAt(middle, -costs.step) ?? [])
  const core = coreOf(target)
  const found: LetterPlace[] = [...inside]
  for (const [step, away] of distances.entries()) {
    if (found.length >= enough) break
    for (const [side, middle] of around(core, extent, away).entries()) {
      const aside = outward === undefined ? 0 : inwardness(middle, core, outward) * costs.inward
      const place = placeAt(middle, step * costs.step + side * costs.side + aside)
      if (place !== undefined) found.push(place)
    }
  }
  return found
}

/** From 0, straight outward, to 1, straight inward. */
function inwardness(middle: Point, core: Bounds, outward: Point): number {
  const from = middleOfBounds(core)
  const [dx, dy] = [middle.x - from.x, middle.y - from.y]
  return (1 - (dx * outward.x + dy * outward.y) / Math.hypot(dx, dy)) / 2
}

function around(core: Bounds, { width, height }: Extent, away: number): readonly Point[] {
  const { x, y } = middleOfBounds(core)
  const dx = (core.right - core.left) / 2 + away + width / 2
  const dy = (core.top - core.bottom) / 2 + away + height / 2
  return directions.map(([right, up]) => ({ x: x + right * dx, y: y + up * dy }))
}
