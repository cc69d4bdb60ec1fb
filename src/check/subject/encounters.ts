import { type Body, hullOfPoints } from '../../geometry/solid/body.ts'
import { nearAmong, nearBetween } from '../../geometry/solid/near-boxes.ts'
import { along, cross, dot, length, minus, type Point3 } from '../../geometry/solid/point3.ts'
import { apart } from '../../geometry/solid/separation.ts'
import { pointAlong } from '../../model/bore/axis.ts'
import { isPlain, type Placed } from '../../model/feature.ts'
import { type Bored, distanceAlong } from '../../model/inside/bored.ts'
import type { Hollow } from '../../model/inside/hollow.ts'
import { coincident, printable } from '../../number/tolerance.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { clearBesideHole } from '../wood/limits.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { depthOfMeeting } from './depth-of-meeting.ts'
import { isBored } from './is-bored.ts'
import { areOnOneFace } from './on-one-face.ts'
import { type Seen, woodSeenBetween } from './seen.ts'

/** How wood lies between two cuts: along both, at a point where they pass crosswise, or before the end of one. */
export type Between = 'beside' | 'crosswise' | 'before'

/** A hole and another cut that come nearer to each other inside the wood than they ought to, or meet there. */
export type Encounter = {
  readonly first: Bored
  readonly second: Bored | Hollow
  /** 0 where they meet. */
  readonly distance: number
  /** Where they meet: how far the one has to move to be clear of the other. */
  readonly overlap: number
  readonly limit: number
  readonly between: Between
  /** On the first and on the second, where they are nearest. */
  readonly places: readonly [Point3, Point3]
}

/**
 * One of every two cuts within `reach` (mm), in the order of the plan; of a rim that is eased all round, whose hollow is in
 * pieces, the worst. What shows on a face as badly as it is inside is left to
 * the rules that look at a face; what is worse inside is said there and not on the face.
 */
export function encountersOf(
  bores: readonly Bored[],
  hollows: readonly Hollow[],
  seen: Seen,
  workshop: Workshop,
  reach: number,
): readonly Encounter[] {
  const boxes = bores.map(({ box }) => box)
  const pairs = nearAmong(boxes, reach).map(([i, j]) => [bores[i]!, bores[j]!] as const)
  const withHollows = nearBetween(
    boxes,
    hollows.map(({ body }) => body.box),
    reach,
  ).map(([i, j]) => [bores[i]!, hollows[j]!] as const)
  const all = [...pairs, ...withHollows].flatMap(([first, second]) =>
    isSeenOnAFace(first, second)
      ? []
      : encounter(first, second, workshop, reach).filter(found => !isSeenAsBad(found, seen)),
  )
  return worstOfEach(
    all,
    ({ first, second }) => pairName(first.feature, second.feature),
    ({ overlap, distance }) => overlap - distance,
  ).map(({ worst }) => worst)
}

/** The names of two cuts that meet or nearly do inside, whichever is the first. */
export function pairName(a: Placed, b: Placed): string {
  return [a.id, b.id].sort().join(' ')
}

/** The ellipse of a leaning hole shows on a face within a tenth of what can be printed. */
function isSeenAsBad({ first, second, distance }: Encounter, seen: Seen): boolean {
  const shown = woodSeenBetween(seen, first.feature, second.feature)
  return shown !== undefined && shown <= distance + printable
}

/** Both square to one face, or to front and back, and at one depth somewhere. */
function isSeenOnAFace(first: Bored, second: Bored | Hollow): boolean {
  const arePlain = [first, second].every(cut => !isBored(cut) || isPlain(cut.feature.shape))
  return arePlain && areOnOneFace(first, second)
}

function encounter(
  first: Bored,
  second: Bored | Hollow,
  workshop: Workshop,
  reach: number,
): readonly Encounter[] {
  const nearest = nearestBodies(first, second, reach)
  if (nearest === undefined) return []
  const { distance, places } = nearest
  if (distance <= coincident) {
    if (isBored(second) && areOneHole(first, second)) return []
    const middle = isBored(second) ? betweenAxes(first, second, nearest.bodies) : undefined
    return [
      {
        first,
        second,
        distance: 0,
        overlap: depthOfMeeting(first, second),
        limit: 0,
        between: 'crosswise',
        places: middle === undefined ? places : [middle, middle],
      },
    ]
  }
  const between = betweenOf(first, second, places)
  const limit = limitOf(between, first, second, workshop)
  return distance < limit - coincident
    ? [{ first, second, distance, overlap: 0, limit, between, places }]
    : []
}

type Nearest = {
  readonly distance: number
  readonly places: readonly [Point3, Point3]
  readonly bodies: readonly [Body, Body]
}

function nearestBodies(first: Bored, second: Bored | Hollow, reach: number): Nearest | undefined {
  let best: Nearest | undefined
  const others = isBored(second) ? second.inWood.map(({ body }) => body) : [second.body]
  for (const { body } of first.inWood) {
    for (const other of others) {
      const farthest = Math.min(reach, best?.distance ?? Infinity)
      const found = apart(body, other, { maxDeviation: coincident, reach: farthest })
      if (found === undefined || (best !== undefined && found.distance >= best.distance)) continue
      best = { distance: found.distance, places: [found.first, found.second], bodies: [body, other] }
    }
  }
  return best
}

/** Where two holes meet: where their axes are nearest, parted as their radii are, if both bodies are there. */
function betweenAxes(first: Bored, second: Bored, bodies: readonly [Body, Body]): Point3 | undefined {
  const lineOf = ({ axis, depth, tip }: Bored) => hullOfPoints([axis.from, pointAlong(axis, depth + tip)])
  const nearest = apart(lineOf(first), lineOf(second), { maxDeviation: coincident })
  if (nearest === undefined) return undefined
  const share = first.radius / (first.radius + second.radius)
  const middle = along(nearest.first, minus(nearest.second, nearest.first), share)
  const at = hullOfPoints([middle])
  const isThere = bodies.every(body => apart(at, body, { maxDeviation: coincident })?.distance === 0)
  return isThere ? middle : undefined
}

/** Holes about one axis: bored in steps, or from both ends, and wanted so. */
function areOneHole(a: Bored, b: Bored): boolean {
  const aside = length(cross(minus(b.axis.from, a.axis.from), a.axis.into))
  return aside <= coincident && length(cross(a.axis.into, b.axis.into)) <= coincident
}

/** Axes that are less than half a right angle apart run beside each other. */
const besideAbove = Math.SQRT1_2

function betweenOf(
  first: Bored,
  second: Bored | Hollow,
  [onFirst, onSecond]: readonly [Point3, Point3],
): Between {
  if (isAtEnd(first, onFirst)) return 'before'
  if (!isBored(second)) return 'crosswise'
  if (isAtEnd(second, onSecond)) return 'before'
  return Math.abs(dot(first.axis.into, second.axis.into)) > besideAbove ? 'beside' : 'crosswise'
}

/** Whether a place on a hole is at the end of its full diameter or on the point beyond it. */
export function isAtEnd(bored: Bored, at: Point3): boolean {
  return !bored.through && distanceAlong(bored.axis, at) >= bored.depth - coincident
}

function limitOf(between: Between, first: Bored, second: Bored | Hollow, workshop: Workshop): number {
  switch (between) {
    case 'before':
      return workshop.clear.underPoint
    case 'crosswise':
      return workshop.wall
    case 'beside': {
      const wider = Math.max(first.radius, isBored(second) ? second.radius : 0)
      return clearBesideHole(2 * wider, workshop)
    }
  }
}
