import { cross, dot, length, minus, type Point3, squareTo, times, unit3 } from './point3.ts'

/**
 * An ellipse in space: `centre + u·cos φ + v·sin φ`, in millimetres. With `u` and `v` of one length and square to each
 * other it is a circle; with both of no length a point.
 */
export type Ring = { readonly centre: Point3; readonly u: Point3; readonly v: Point3 }

/** A plane: every point `p` with `normal · p = offset`; `normal` is a unit vector. */
export type Plane3 = { readonly normal: Point3; readonly offset: number }

/** A piece of a cone about its axis: so wide (radius, mm) where it begins and where it ends. A cylinder is as wide at both. */
export type Cone = {
  readonly from: Point3
  readonly to: Point3
  readonly radiusFrom: number
  readonly radiusTo: number
}

/** A circle about an axis, whose direction is a unit vector. */
export function circleAbout(centre: Point3, axis: Point3, radius: number): Ring {
  const u = squareOf(axis)
  return { centre, u: times(u, radius), v: times(cross(axis, u), radius) }
}

/**
 * The ellipse in which a plane cuts a cone, where it cuts right through it and not through one of its ends.
 *
 * Round the axis `w`, with `e` the direction in which the plane rises, the surface is `from + w·t + ρ(t)·(e cos φ +
 * f sin φ)`, `ρ(t)` growing in step with `t`. In the plane `t` follows from `cos φ`; the points at 0 and π are the
 * ends of one axis of the ellipse, and half-way between them it is as wide as the cone leaves along `f`.
 */
export function section(cone: Cone, { normal, offset }: Plane3): Ring | undefined {
  const run = minus(cone.to, cone.from)
  const w = unit3(run)
  if (w === undefined) return undefined
  const long = dot(run, w)
  const across = squareTo(normal, w)
  const e = length(across) > nearlySquare ? unit3(across)! : squareOf(w)
  const straight = dot(normal, w)
  const slant = dot(normal, e)
  const growth = (cone.radiusTo - cone.radiusFrom) / long
  // steeper than the cone itself it cuts out a parabola or a hyperbola
  if (Math.abs(slant * growth) >= Math.abs(straight)) return undefined
  const start = offset - dot(normal, cone.from)
  const radiusAt = (t: number) => cone.radiusFrom + growth * t
  const on = (side: 1 | -1) => {
    const t = (start - side * slant * cone.radiusFrom) / (straight + side * slant * growth)
    return { t, out: side * radiusAt(t) }
  }
  const [near, far] = [on(1), on(-1)]
  if (!(within(near.t, long) && within(far.t, long))) return undefined
  const t = (near.t + far.t) / 2
  const out = (near.out + far.out) / 2
  const wide = Math.sqrt(Math.max(0, radiusAt(t) ** 2 - out ** 2))
  return {
    centre: combine(cone.from, w, t, e, out),
    u: combine({ x: 0, y: 0, z: 0 }, w, (near.t - far.t) / 2, e, (near.out - far.out) / 2),
    v: times(cross(w, e), wide),
  }
}

/** Of a plane as square to an axis as this the direction of its rise is half rounding, and any will do as well. */
const nearlySquare = Math.sqrt(Number.EPSILON)

/** How far the ellipse reaches in a direction: the greatest of `d · p` over its points. */
export function reachOf({ centre, u, v }: Ring, d: Point3): number {
  return dot(centre, d) + Math.hypot(dot(u, d), dot(v, d))
}

function within(t: number, long: number): boolean {
  return t >= 0 && t <= long
}

function combine(p: Point3, w: Point3, t: number, e: Point3, out: number): Point3 {
  return {
    x: p.x + w.x * t + e.x * out,
    y: p.y + w.y * t + e.y * out,
    z: p.z + w.z * t + e.z * out,
  }
}

/** Some direction square to a unit vector: that of the axis which lies farthest from it, made square. */
function squareOf(axis: Point3): Point3 {
  const [x, y, z] = [Math.abs(axis.x), Math.abs(axis.y), Math.abs(axis.z)]
  const far = x <= y && x <= z ? { x: 1, y: 0, z: 0 } : y <= z ? { x: 0, y: 1, z: 0 } : { x: 0, y: 0, z: 1 }
  return unit3(squareTo(far, axis))!
}
