import { coincident } from '../../number/tolerance.ts'
import { type Body, movedAlong, reach } from './body.ts'
import { cross, minus, type Point3, squareTo, times, unit3 } from './point3.ts'
import { type Apart, apart } from './separation.ts'

/** Two convex bodies that run into each other. */
export type Pair = readonly [a: Body, b: Body]

/** How far in millimetres, and in which direction the second of every pair has to move, for all of them to be clear. */
export type Overlap = { readonly by: number; readonly way: Point3 }

/** Where bodies meet much less deep than they are round, every round leaves a small share of what was left. */
const mostRounds = 50

/**
 * How deep two things run into each other: the shortest move that makes one clear of the other. Each is made of convex
 * bodies, and the pairs of those that meet are given. Bodies that do not run into each other overlap by 0.
 *
 * From each of a few ways — the directions given, the axes' common square, and what is left of each square to the other —
 * the second is drawn out, and the way turned to where it came out last, as long as that makes the move shorter. The
 * move found is always one that clears; it is the very shortest where one of those ways leads to it, and for two round
 * bars that cross it is both radii less the distance of their axes.
 *
 * Source: Cameron and Culley, Determining the minimum translational distance between two convex polyhedra, 1986, for the
 * measure; that the nearest places of the bodies drawn apart give a way no longer follows from the plane that parts them.
 */
export function overlapOf(pairs: readonly Pair[], axes: readonly [Point3, Point3]): Overlap {
  const [p, q] = axes
  const ways = [p, q, cross(p, q), squareTo(p, q), squareTo(q, p)].flatMap(d => {
    const way = unit3(d)
    return way === undefined ? [] : [way, times(way, -1)]
  })
  return ways
    .map(way => shortened(pairs, moveAlong(pairs, way)))
    .reduce((best, move) => (move.by < best.by ? move : best))
}

/** The move along one way: until a plane square to it parts every pair. */
function moveAlong(pairs: readonly Pair[], way: Point3): Overlap {
  const by = pairs.map(([a, b]) => reach(a, way) + reach(b, times(way, -1)))
  return { by: Math.max(0, ...by), way }
}

function shortened(pairs: readonly Pair[], start: Overlap): Overlap {
  let move = start
  for (let round = 0; round < mostRounds && move.by > coincident; round++) {
    const way = wayOut(pairs, move)
    if (way === undefined) break
    const next = moveAlong(pairs, way)
    if (!(next.by < move.by - coincident)) break
    move = next
  }
  return move
}

/** Moved twice as far as they must be, the way between the nearest two bodies. */
function wayOut(pairs: readonly Pair[], { by, way }: Overlap): Point3 | undefined {
  const out = pairs.map(([a, b]) => apart(a, movedAlong(b, way, 2 * by), { maxDeviation: 0 })!)
  const { first, second } = out.reduce((least, one): Apart => (one.distance < least.distance ? one : least))
  return unit3(minus(second, first))
}
