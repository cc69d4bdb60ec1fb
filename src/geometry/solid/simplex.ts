import { dot, minus, type Point3 } from './point3.ts'

/** A point of the difference of two bodies, and the points of the two that it comes from. */
export type Corner = { readonly at: Point3; readonly first: Point3; readonly second: Point3 }

/** Up to four corners and the point of their hull that is nearest to the origin, as shares of them that add up to 1. */
export type Simplex = {
  readonly corners: readonly Corner[]
  readonly shares: readonly number[]
  readonly nearest: Point3
}

/** Which corners make the vertices, edges, faces and the whole of a simplex of up to four. */
const subsets: readonly (readonly number[])[] = [
  [0],
  [1],
  [2],
  [3],
  [0, 1],
  [0, 2],
  [1, 2],
  [0, 3],
  [1, 3],
  [2, 3],
  [0, 1, 2],
  [0, 1, 3],
  [0, 2, 3],
  [1, 2, 3],
  [0, 1, 2, 3],
]

/**
 * The nearest point to the origin of the hull of one to four corners, on as few of them as carry it. Every vertex, edge
 * and face is tried and the nearest foot that lies within its own corners taken, so that a flat or a thin simplex,
 * whose faces have no direction to speak of, still gives what its edges give.
 */
export function nearestOfHull(corners: readonly Corner[]): Simplex {
  let best: Simplex | undefined
  let least = Infinity
  for (const subset of subsets) {
    if (subset.at(-1)! >= corners.length) continue
    const own = subset.map(i => corners[i]!)
    const shares = footShares(own.map(({ at }) => at))
    if (shares === undefined) continue
    const nearest = mix(own, shares, 'at')
    const square = dot(nearest, nearest)
    if (square < least) {
      least = square
      best = { corners: own, shares, nearest }
    }
  }
  return best!
}

/** The point of the one or the other body that a simplex's nearest point comes from. */
export function mix(corners: readonly Corner[], shares: readonly number[], of: keyof Corner): Point3 {
  let [x, y, z] = [0, 0, 0]
  corners.forEach((corner, i) => {
    const share = shares[i]!
    x += corner[of].x * share
    y += corner[of].y * share
    z += corner[of].z * share
  })
  return { x, y, z }
}

/** The foot of the origin on the point, line, plane or space of some points, in shares; none where it lies outside them. */
function footShares(points: readonly Point3[]): readonly number[] | undefined {
  const [a, ...others] = points as [Point3, ...Point3[]]
  const edges = others.map(p => minus(p, a))
  const solved = solve(edges, a)
  if (solved === undefined) return undefined
  const shares = [1 - solved.reduce((sum, share) => sum + share, 0), ...solved]
  return shares.every(share => share >= 0) ? shares : undefined
}

/** The shares s of the edges for which `a + Σ s·edge` is square to every edge, by Cramer's rule. */
function solve(edges: readonly Point3[], a: Point3): readonly number[] | undefined {
  const m = edges.map(e => edges.map(f => dot(e, f)))
  const right = edges.map(e => -dot(e, a))
  const whole = determinant(m)
  if (!(whole > 0)) return edges.length === 0 ? [] : undefined
  return edges.map((_, i) => determinant(m.map((row, r) => row.with(i, right[r]!))) / whole)
}

function determinant(m: readonly (readonly number[])[]): number {
  const [a, b, c] = m
  if (a === undefined) return 1
  if (b === undefined) return a[0]!
  if (c === undefined) return a[0]! * b[1]! - a[1]! * b[0]!
  return (
    a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) -
    a[1]! * (b[0]! * c[2]! - b[2]! * c[0]!) +
    a[2]! * (b[0]! * c[1]! - b[1]! * c[0]!)
  )
}
