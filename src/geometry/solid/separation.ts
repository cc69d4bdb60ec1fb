import { coincident } from '../../number/tolerance.ts'
import type { Body } from './body.ts'
import { areNear } from './box3.ts'
import { dot, length, minus, type Point3, times } from './point3.ts'
import { type Corner, mix, nearestOfHull, type Simplex } from './simplex.ts'

/** How far two bodies are apart in millimetres, 0 where they meet, and where they come nearest. */
export type Apart = {
  readonly distance: number
  /** The true distance is no less than this, and no more than `distance`. */
  readonly atLeast: number
  readonly first: Point3
  readonly second: Point3
}

/** Smooth bodies are there in ten to forty rounds; whoever is not has met the end of the numbers. */
const mostRounds = 200

/**
 * The shortest way between two convex bodies; nothing where they are farther apart than `reach` (mm). It is too long by
 * no more than `maxDeviation` (mm), or as little as rounding leaves between bodies that all but touch; `atLeast` proves it
 * for every answer. Bodies nearer than `coincident` meet.
 *
 * Source: Gilbert, Johnson and Keerthi, A fast procedure for computing the distance between complex objects in
 * three-dimensional space, 1988; the bound is theirs: a plane square to the shortest way found, through the farthest
 * point, parts the two.
 */
export function apart(
  a: Body,
  b: Body,
  { maxDeviation, reach = Infinity }: { readonly maxDeviation: number; readonly reach?: number },
): Apart | undefined {
  if (!areNear(a.box, b.box, reach)) return undefined
  let simplex = nearestOfHull([cornerToward(a, b, minus(middle(b), middle(a)))])
  let atLeast = 0
  for (let round = 0; round < mostRounds; round++) {
    const { nearest, corners } = simplex
    const distance = length(nearest)
    // all four corners: the origin is between them
    if (distance <= coincident || corners.length === 4)
      return { ...placesOf(simplex), distance: 0, atLeast: 0 }
    const corner = cornerToward(a, b, times(nearest, -1))
    atLeast = Math.max(atLeast, dot(corner.at, nearest) / distance)
    if (atLeast > reach) return undefined
    if (distance - atLeast <= maxDeviation) break
    const next = nearestOfHull([...corners, corner])
    // what is left is rounding
    if (!(length(next.nearest) < distance)) break
    simplex = next
  }
  const distance = length(simplex.nearest)
  return distance > reach ? undefined : { ...placesOf(simplex), distance, atLeast }
}

/** The point of the difference `a − b` that lies farthest in a direction. */
function cornerToward(a: Body, b: Body, d: Point3): Corner {
  const first = a.farthest(d)
  const second = b.farthest(times(d, -1))
  return { at: minus(first, second), first, second }
}

function placesOf({ corners, shares }: Simplex): Pick<Apart, 'first' | 'second'> {
  return { first: mix(corners, shares, 'first'), second: mix(corners, shares, 'second') }
}

function middle({ box: { low, high } }: Body): Point3 {
  return { x: (low.x + high.x) / 2, y: (low.y + high.y) / 2, z: (low.z + high.z) / 2 }
}
