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
    // the places rise within a subset
    if (subset[subset.length - 1]! >= corners.length) continue
    const own = subset.map(i => corners[i]!)
    const shares = footShares(own)
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
  let x = 0
  let y = 0
  let z = 0
  for (let i = 0; i < corners.length; i++) {
    const p = corners[i]![of]
    const share = shares[i]!
    x += p.x * share
    y += p.y * share
    z += p.z * share
  }
  return { x, y, z }
}

/**
 * The foot of the origin on the point, line, plane or space of some corners, in shares; none where it lies outside them.
 *
 * With the edges from the first corner `a`, the shares s are those for which `a + Σ s·edge` is square to every edge, by
 * Cramer's rule. Written out for each number of edges: this is the innermost step of all that is asked about solids.
 */
function footShares(corners: readonly Corner[]): readonly number[] | undefined {
  const a = corners[0]!.at
  if (corners.length === 1) return [1]
  const e = minus(corners[1]!.at, a)
  const ee = dot(e, e)
  const ae = -dot(e, a)
  if (corners.length === 2) {
    const s = ae / ee
    return ee > 0 ? ifWithin([1 - s, s]) : undefined
  }
  const f = minus(corners[2]!.at, a)
  const ef = dot(e, f)
  const ff = dot(f, f)
  const af = -dot(f, a)
  if (corners.length === 3) {
    const whole = ee * ff - ef * ef
    const s = (ae * ff - ef * af) / whole
    const t = (ee * af - ae * ef) / whole
    return whole > 0 ? ifWithin([1 - (s + t), s, t]) : undefined
  }
  const g = minus(corners[3]!.at, a)
  const eg = dot(e, g)
  const fg = dot(f, g)
  const gg = dot(g, g)
  const ag = -dot(g, a)
  const whole = determinant(ee, ef, eg, ef, ff, fg, eg, fg, gg)
  const s = determinant(ae, ef, eg, af, ff, fg, ag, fg, gg) / whole
  const t = determinant(ee, ae, eg, ef, af, fg, eg, ag, gg) / whole
  const u = determinant(ee, ef, ae, ef, ff, af, eg, fg, ag) / whole
  return whole > 0 ? ifWithin([1 - (s + t + u), s, t, u]) : undefined
}

/** The shares, where none is negative. */
function ifWithin(shares: readonly number[]): readonly number[] | undefined {
  for (let i = 0; i < shares.length; i++) if (!(shares[i]! >= 0)) return undefined
  return shares
}

/** Of a matrix by its rows. */
function determinant(
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  g: number,
  h: number,
  i: number,
): number {
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
}
