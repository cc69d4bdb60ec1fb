import { arcChords } from '../../geometry/approximate/chords.ts'
import { difference } from '../../geometry/boolean/index.ts'
import { boundsOfRegions } from '../../geometry/measure/bounds.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import { counterClockwise, orientRegion } from '../../geometry/measure/orient.ts'
import type { Contour, Region } from '../../geometry/shape/contour.ts'
import { mirrorAcross } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { type Segment, withTag } from '../../geometry/shape/segment.ts'
import { spans } from '../../geometry/shape/span.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { type Body, hullOfPoints } from '../../geometry/solid/body.ts'
import type { Point3 } from '../../geometry/solid/point3.ts'
import type { Plane3 } from '../../geometry/solid/ring.ts'
import { coincident, printable } from '../../number/tolerance.ts'
import { isPlaced, type Placed } from '../feature.ts'
import type { Solid } from '../part.ts'
import { extentOf } from '../solid-extent.ts'

/** A flat piece of the outside of the wood: of its front or back, or of what bounds it as seen on the front. */
export type Wall = {
  /** What the maker calls it: "back", "left", "notch step". */
  readonly name: string
  /** The notch or cut-out that made it. */
  readonly cut?: Placed
  /** Of one surface are the pieces that stand for one edge of the outline. */
  readonly surface: Segment | 'front' | 'back'
  /** Its normal leaves the wood. */
  readonly plane: Plane3
  readonly body: Body
}

/** The wood as seen on the front, when all is cut out of it that goes through the thickness, and its outside. */
export type Wood = {
  readonly regions: readonly Region[]
  readonly thickness: number
  /** Front and back; of a part that is cut away whole there is no outside. */
  readonly faces: readonly Wall[]
  /** The faces and what stands upright round them. */
  readonly walls: readonly Wall[]
  /** Planes that all the wood lies on the inner side of: front, back and those straight edges that no part of the outline lies beyond. */
  readonly bounds: readonly Plane3[]
}

/** How far inside an arc of the outline the flat pieces may lie that stand for it, in millimetres. */
export const wallDeviation = printable / 5

export function woodOf(solid: Solid): Wood {
  const { thickness } = extentOf(solid)
  const { regions, cuts } = regionsOf(solid)
  const faces = regions.length === 0 ? [] : frontAndBack(regions, thickness)
  const bounds = [...faces.map(({ plane }) => plane), ...convexEdges(solid.outline)]
  let walls: readonly Wall[] | undefined
  return {
    regions,
    thickness,
    faces,
    // curves have many, and who bores straight from front to back asks for none of them
    get walls() {
      walls ??= [...faces, ...uprightWalls(regions, thickness, cuts)]
      return walls
    },
    bounds,
  }
}

/** Whether a direction leads straight from front to back or the other way, along all that stands upright. */
export function isSquareToFaces({ x, y }: Point3): boolean {
  return x === 0 && y === 0
}

/** Whether there is wood at a place, its outside included, before anything is bored or sunk into it. */
export function isWood({ regions, thickness }: Wood, p: Point3): boolean {
  return (
    p.z >= -coincident &&
    p.z <= thickness + coincident &&
    regions.some(region => pointInRegion(region, p) !== 'outside')
  )
}

/** The planes of the straight edges of an outline that have all of it on their inner side. */
function convexEdges(outline: Region): readonly Plane3[] {
  const { segments } = counterClockwise(outline.outer)
  return segments.flatMap(edge => {
    if (edge.kind === 'arc') return []
    const plane = planeThrough(edge.from, edge.to)
    const isOuter = segments.every(s => reachOf(s, plane.normal) <= plane.offset + coincident)
    return isOuter ? [plane] : []
  })
}

/** How far an edge of the outline reaches in a direction, which is a unit vector: the greatest of `d · p` over its points. */
function reachOf(s: Segment, { x, y }: Point3): number {
  const ends = Math.max(x * s.from.x + y * s.from.y, x * s.to.x + y * s.to.y)
  if (s.kind === 'line') return ends
  const { centre, radius } = s
  const bulge = x * centre.x + y * centre.y + radius
  return bulge > ends && spans(s, { x: centre.x + x * radius, y: centre.y + y * radius }) ? bulge : ends
}

/** Edges that a cut leaves behind carry its name, by which it is found again. */
function regionsOf(solid: Solid): { regions: readonly Region[]; cuts: ReadonlyMap<string, Placed> } {
  const cuts = new Map<string, Placed>()
  const waste = solid.features.filter(isPlaced).flatMap(feature => {
    const { shape } = feature
    if (shape.kind !== 'edge-cut' && shape.kind !== 'cut-out') return []
    const tag = `${shape.kind === 'cut-out' ? 'cut-out' : 'notch'} ${feature.id}`
    cuts.set(tag, feature)
    const { left, right } = boundsOfRegions([solid.faces.back.region])
    const behind = feature.face === 'back'
    const region = behind ? transformRegion(shape.region, mirrorAcross((left + right) / 2)) : shape.region
    return [tagged(region, tag)]
  })
  if (waste.length === 0) return { regions: [solid.outline], cuts }
  const left = difference([solid.outline], waste)
  return { regions: left.ok ? left.value : [solid.outline], cuts }
}

function tagged({ outer, holes }: Region, tag: string): Region {
  const named = ({ segments, closed }: Contour) => ({ segments: segments.map(s => withTag(s, tag)), closed })
  return { outer: named(outer), holes: holes.map(named) }
}

function frontAndBack(regions: readonly Region[], thickness: number): readonly Wall[] {
  const { left, right, bottom, top } = boundsOfRegions(regions)
  const at = (z: number) =>
    hullOfPoints([
      { x: left, y: bottom, z },
      { x: right, y: bottom, z },
      { x: right, y: top, z },
      { x: left, y: top, z },
    ])
  return [
    {
      name: 'front',
      surface: 'front',
      plane: { normal: { x: 0, y: 0, z: 1 }, offset: thickness },
      body: at(thickness),
    },
    { name: 'back', surface: 'back', plane: { normal: { x: 0, y: 0, z: -1 }, offset: 0 }, body: at(0) },
  ]
}

function uprightWalls(
  regions: readonly Region[],
  thickness: number,
  cuts: ReadonlyMap<string, Placed>,
): readonly Wall[] {
  return regions.flatMap(region => {
    const { outer, holes } = orientRegion(region)
    return [outer, ...holes].flatMap(contour => wallsAround(contour, thickness, cuts))
  })
}

/** The contour has the wood on its left. */
function wallsAround(
  { segments }: Contour,
  thickness: number,
  cuts: ReadonlyMap<string, Placed>,
): readonly Wall[] {
  return segments.flatMap(surface => {
    const cut = surface.tag === undefined ? undefined : cuts.get(surface.tag)
    const points = surface.kind === 'line' ? [surface.from, surface.to] : arcChords(surface, wallDeviation)
    return points.slice(1).map((to, i) => new UprightWall(surface, cut, points[i]!, to, thickness))
  })
}

/** A wall whose body is made when it is asked for: an arc has many walls, and few of them are ever near to a hole. */
class UprightWall implements Wall {
  readonly name: string
  readonly cut?: Placed
  readonly surface: Segment
  readonly plane: Plane3
  readonly #corners: () => readonly Point3[]
  #body: Body | undefined

  constructor(surface: Segment, cut: Placed | undefined, from: Point, to: Point, thickness: number) {
    this.name = surface.tag ?? 'edge'
    if (cut !== undefined) this.cut = cut
    this.surface = surface
    this.plane = planeThrough(from, to)
    this.#corners = () => [0, thickness].flatMap(z => [from, to].map(({ x, y }) => ({ x, y, z })))
  }

  get body(): Body {
    this.#body ??= hullOfPoints(this.#corners())
    return this.#body
  }
}

/** The upright plane through two points of the front, with the wood on the left of the way from one to the other. */
export function planeThrough(from: Point, to: Point): Plane3 {
  const size = Math.hypot(to.x - from.x, to.y - from.y)
  const normal: Point3 = { x: (to.y - from.y) / size, y: (from.x - to.x) / size, z: 0 }
  return { normal, offset: normal.x * from.x + normal.y * from.y }
}
