/** A place or a direction in space, in millimetres, of a right-handed frame. */
export type Point3 = { readonly x: number; readonly y: number; readonly z: number }

export function dot(a: Point3, b: Point3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z
}

/** Square to both, right-handed. */
export function cross(a: Point3, b: Point3): Point3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x }
}

/** What leads from `b` to `a`. */
export function minus(a: Point3, b: Point3): Point3 {
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z }
}

/** From `p` so many times along `d`. */
export function along(p: Point3, d: Point3, times: number): Point3 {
  return { x: p.x + d.x * times, y: p.y + d.y * times, z: p.z + d.z * times }
}

export function times(d: Point3, factor: number): Point3 {
  return { x: d.x * factor, y: d.y * factor, z: d.z * factor }
}

export function length(d: Point3): number {
  return Math.hypot(d.x, d.y, d.z)
}

/** As long as a millimetre. A direction without a length has none: `undefined`. */
export function unit3(d: Point3): Point3 | undefined {
  const long = length(d)
  // divided one by one: what is one over a length that small has no number
  return long > 0 ? { x: d.x / long, y: d.y / long, z: d.z / long } : undefined
}

/** The part of a direction that is square to a unit vector. */
export function squareTo(d: Point3, to: Point3): Point3 {
  return along(d, to, -dot(d, to))
}

/** The point halfway between two others. */
export function midpoint3(a: Point3, b: Point3): Point3 {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 }
}
