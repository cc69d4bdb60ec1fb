import { coincident } from '../../number/tolerance.ts'
import type { Region } from '../shape/contour.ts'
import { midpoint, type Point } from '../shape/point.ts'
import { freeCut } from './free-cut.ts'
import { type Chord, type Edge, neckChords } from './neck-chord.ts'
import { boxDirections, conesMeet, nodeCones, opposite } from './normal-cone.ts'
import { orientRegion } from './orient.ts'
import { nodeDistance, type SegmentTree, segmentTree } from './segment-tree.ts'
import type { Place } from './separation.ts'

/**
 * The place where a region is narrowest between two stretches of one and the same contour: cut there, it falls
 * apart (or a ring opens).
 */
export type Neck = {
  /** The middle of the cut. */
  readonly at: Point
  /** The length of the cut, in millimetres. */
  readonly width: number
  /** The direction across the neck, from `first` to `second`, in radians from −π to π, counter-clockwise from +x. */
  readonly direction: number
  readonly first: Place
  readonly second: Place
}

/**
 * The narrowest neck of a region: the shortest straight cut inside it, both ends on one contour, that cannot
 * be shortened by sliding its ends along the boundary. So a rectangle's neck is its width and a dumbbell's its
 * waist; a triangle, an ellipse or a full circle, which narrow only into a corner or not at all, have none:
 * `undefined`. Where a stretch is equally narrow, the cut in its middle. Walls between different contours are
 * {@link thinnestWall}'s.
 *
 * With `accept`, the narrowest of those whose direction (as in {@link Neck}) it takes; it is asked about either way
 * along the same line alike.
 */
export function narrowestNeck(
  region: Region,
  accept: (direction: number) => boolean = () => true,
): Neck | undefined {
  const { outer, holes } = orientRegion(region)
  const contours = [outer, ...holes]
  const tree = segmentTree(contours)
  const cones = nodeCones(tree, contours)
  const edges = contours.flatMap(({ segments }) =>
    segments.map(
      (segment, i): Edge => ({
        before: segments.at(i - 1)!,
        segment,
        after: segments[(i + 1) % segments.length]!,
      }),
    ),
  )
  let best: (Chord & { readonly edges: readonly [number, number] }) | undefined
  const worthwhile = (width: number) => best === undefined || width < best.width + coincident

  const visit = (i: number, j: number): void => {
    const apart = nodeDistance(tree, i, tree, j)
    if (!worthwhile(apart)) return
    if (!mayFaceEachOther(i, j)) return
    if (i >= tree.leaves) {
      const p = i - tree.leaves
      const q = j - tree.leaves
      if (p === q || tree.contours[p] !== tree.contours[q]) return
      for (const chord of neckChords(edges[p]!, edges[q]!)) {
        if (!worthwhile(chord.width) || (best !== undefined && !isBetter(chord, best))) continue
        if (!accept(directionOf(chord))) continue
        const free = freeCut(tree, chord)
        if (free !== undefined) best = { ...free, edges: [p, q] }
      }
      return
    }
    visit(2 * i, 2 * j)
    visit(2 * i, 2 * j + 1)
    if (i !== j) visit(2 * i + 1, 2 * j)
    visit(2 * i + 1, 2 * j + 1)
  }
  const mayFaceEachOther = (i: number, j: number): boolean => {
    const a = cones[i]
    const b = cones[j]
    if (a === undefined || b === undefined) return false
    const directions = boxDirections(tree, i, j)
    return conesMeet(a, directions) && conesMeet(opposite(b), directions) && conesMeet(a, opposite(b))
  }
  visit(1, 1)
  if (best === undefined) return undefined
  const { first, second, width } = best
  const place = (point: Point, edge: number): Place => ({
    point,
    contour: tree.contours[edge]!,
    segment: segmentNumber(region, tree, edge),
  })
  return {
    at: midpoint(first, second),
    width,
    direction: directionOf(best),
    first: place(first, best.edges[0]),
    second: place(second, best.edges[1]),
  }
}

function directionOf({ first, second }: Chord): number {
  return Math.atan2(second.y - first.y, second.x - first.x)
}

/** Narrower; or as narrow, and so over a longer stretch. */
function isBetter(a: Chord, b: Chord): boolean {
  if (Math.abs(a.width - b.width) > coincident) return a.width < b.width
  return (a.stretch?.length ?? 0) > (b.stretch?.length ?? 0) + coincident
}

/** The number of an edge in the contour as it was given, which may have been run the other way here. */
function segmentNumber(region: Region, tree: SegmentTree, edge: number): number {
  const contour = tree.contours[edge]!
  const given = contour === 0 ? region.outer : region.holes[contour - 1]!
  const place = tree.places[edge]!
  const segment = tree.segments[edge]!
  return given.segments[place] === segment ? place : given.segments.length - 1 - place
}
