import { type Box3, boxAround, joinBoxes } from './box3.ts'
import { along, dot, minus, type Point3 } from './point3.ts'
import { type Ring, reachOf } from './ring.ts'

/** A convex body, by the point of it that lies farthest in a direction (of any length but none). */
export type Body = { readonly farthest: (d: Point3) => Point3; readonly box: Box3 }

/** A body whose box is worked out when it is asked for: of many that are cut from one another only the last is. */
class Hull implements Body {
  readonly farthest: (d: Point3) => Point3
  readonly #boxOf: () => Box3
  #box: Box3 | undefined

  constructor(farthest: (d: Point3) => Point3, boxOf: () => Box3) {
    this.farthest = farthest
    this.#boxOf = boxOf
  }

  get box(): Box3 {
    this.#box ??= this.#boxOf()
    return this.#box
  }
}

/** The hull of ellipses: of two a cylinder, a cone or what is left of them between two planes, of one a disc. */
export function hullOfRings(rings: readonly Ring[]): Body {
  const farthest = (d: Point3): Point3 => {
    let best: Ring | undefined
    let most = -Infinity
    for (const ring of rings) {
      const reach = reachOf(ring, d)
      if (reach > most) {
        most = reach
        best = ring
      }
    }
    return farthestOfRing(best!, d)
  }
  return new Hull(farthest, () => boxOfRings(rings))
}

/** The hull of points: a prism, a face, a point. */
export function hullOfPoints(points: readonly Point3[]): Body {
  const farthest = (d: Point3): Point3 => {
    let best = points[0]!
    let most = dot(best, d)
    for (const p of points) {
      const reach = dot(p, d)
      if (reach > most) {
        most = reach
        best = p
      }
    }
    return best
  }
  return new Hull(farthest, () => boxAround(points))
}

/** What lies between bodies as well as in them. */
export function hullOfBodies(bodies: readonly Body[]): Body {
  const farthest = (d: Point3): Point3 =>
    bodies.map(body => body.farthest(d)).reduce((best, p) => (dot(p, d) > dot(best, d) ? p : best))
  return new Hull(farthest, () => joinBoxes(bodies.map(({ box }) => box)))
}

/** A body moved by so many times a direction. */
export function movedAlong(body: Body, d: Point3, times: number): Body {
  return new Hull(
    to => along(body.farthest(to), d, times),
    () => ({ low: along(body.box.low, d, times), high: along(body.box.high, d, times) }),
  )
}

/** How far a body reaches in a direction: the greatest of `d · p` over its points. */
export function reach(body: Body, d: Point3): number {
  return dot(body.farthest(d), d)
}

function farthestOfRing({ centre, u, v }: Ring, d: Point3): Point3 {
  const a = dot(u, d)
  const b = dot(v, d)
  const size = Math.hypot(a, b)
  // seen from its edge, or a point: its middle lies as far as any
  if (size === 0) return centre
  const p = a / size
  const q = b / size
  return {
    x: centre.x + u.x * p + v.x * q,
    y: centre.y + u.y * p + v.y * q,
    z: centre.z + u.z * p + v.z * q,
  }
}

function boxOfRings(rings: readonly Ring[]): Box3 {
  return joinBoxes(
    rings.map(({ centre, u, v }) => {
      const wide = { x: Math.hypot(u.x, v.x), y: Math.hypot(u.y, v.y), z: Math.hypot(u.z, v.z) }
      return { low: minus(centre, wide), high: along(centre, wide, 1) }
    }),
  )
}
