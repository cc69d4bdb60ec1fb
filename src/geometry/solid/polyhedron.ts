import { coincident } from '../../number/tolerance.ts'
import { type Body, hullOfPoints, reach } from './body.ts'
import { along, cross, dot, length, minus, type Point3, squareTo, unit3 } from './point3.ts'
import type { Plane3, Ring } from './ring.ts'

/** A convex body by its faces, each a convex polygon. Which way round a face runs carries no meaning. */
export type Polyhedron = { readonly faces: readonly (readonly Point3[])[] }

/** What lies between two polygons of as many corners, the first joined to the first. */
export function prismoid(lower: readonly Point3[], upper: readonly Point3[]): Polyhedron {
  const walls = lower.map((p, i) => {
    const next = (i + 1) % lower.length
    return [p, lower[next]!, upper[next]!, upper[i]!]
  })
  return { faces: [lower, upper, ...walls] }
}

/** So many corners of an ellipse that its chords stay within `maxDeviation` (mm) of it. */
export function cornersOfRings(
  rings: readonly [Ring, Ring],
  maxDeviation: number,
): readonly [readonly Point3[], readonly Point3[]] {
  const radius = Math.max(...rings.flatMap(({ u, v }) => [length(u), length(v)]))
  // the height of a chord's segment is 2r·sin²(step/4)
  const step = 4 * Math.asin(Math.min(1, Math.sqrt(maxDeviation / (2 * radius))))
  const count = Math.max(8, Math.ceil((2 * Math.PI) / step))
  const cornersOf = ({ centre, u, v }: Ring) =>
    Array.from({ length: count }, (_, i) => {
      const at = (2 * Math.PI * i) / count
      return along(along(centre, u, Math.cos(at)), v, Math.sin(at))
    })
  return [cornersOf(rings[0]), cornersOf(rings[1])]
}

/** What of a polyhedron lies on the inner side of a plane, where `normal · p ≤ offset`; without faces where nothing does. */
export function clip({ faces }: Polyhedron, plane: Plane3): Polyhedron {
  const cap: Point3[] = []
  const kept = faces.flatMap(face => {
    const inside = clipFace(face, plane)
    cap.push(...inside.filter(p => Math.abs(heightOver(p, plane)) <= coincident))
    return inside.length < 3 ? [] : [inside]
  })
  return { faces: cap.length < 3 || kept.length === 0 ? kept : [...kept, roundTheMiddle(cap, plane.normal)] }
}

/** The polyhedron as a body; nothing where it has no faces. */
export function bodyOf({ faces }: Polyhedron): Body | undefined {
  return faces.length === 0 ? undefined : hullOfPoints([...new Set(faces.flat())])
}

/** Whether a body lies on the inner side of a plane, within `coincident`. */
export function isWithin(body: Body, { normal, offset }: Plane3): boolean {
  return reach(body, normal) <= offset + coincident
}

function clipFace(face: readonly Point3[], plane: Plane3): readonly Point3[] {
  const points: Point3[] = []
  face.forEach((p, i) => {
    const q = face[(i + 1) % face.length]!
    const [a, b] = [heightOver(p, plane), heightOver(q, plane)]
    if (a <= 0) points.push(p)
    // by their signs: the product of two small heights may be nothing
    if ((a < 0 && b > 0) || (a > 0 && b < 0)) points.push(along(p, minus(q, p), a / (a - b)))
  })
  return points
}

function heightOver(p: Point3, { normal, offset }: Plane3): number {
  return dot(normal, p) - offset
}

/** Points of a plane that are the corners of a convex polygon, in the order in which they go round. */
function roundTheMiddle(points: readonly Point3[], normal: Point3): readonly Point3[] {
  const share = 1 / points.length
  const middle = points.reduce((sum, p) => along(sum, p, share), { x: 0, y: 0, z: 0 })
  const right = unit3(squareTo(minus(points[0]!, middle), normal))
  if (right === undefined) return points
  const up = cross(normal, right)
  const angle = (p: Point3) => Math.atan2(dot(minus(p, middle), up), dot(minus(p, middle), right))
  return points.toSorted((p, q) => angle(p) - angle(q))
}
