import type { Contour, Region } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import { segmentDistance } from './segment-distance.ts'
import { insideTree, nodeDistance, type SegmentTree, segmentTree } from './segment-tree.ts'

/** A point on a boundary: `contour` 0 is the outer one (or the only one), 1 the first hole; both count from 0. */
export type Place = { readonly point: Point; readonly contour: number; readonly segment: number }

/** How far two things are apart in millimetres, and where they come nearest. */
export type Separation = { readonly distance: number; readonly first: Place; readonly second: Place }

/**
 * The shortest way between two contours, taken as lines without an inside; 0 where they meet. Of several
 * shortest ways one is given. Time grows little faster than the number of edges.
 *
 * @throws RangeError when a contour has no edges
 */
export function contourSeparation(a: Contour, b: Contour): Separation {
  return closest(segmentTree([a]), segmentTree([b]))
}

/**
 * The shortest way between two regions, taken as areas: 0 where they meet, overlap or one lies in the other,
 * with a point that is in both. A region that lies in a hole of the other is outside it.
 *
 * @throws RangeError when a region has no edges
 */
export function regionSeparation(a: Region, b: Region): Separation {
  const ta = segmentTree([a.outer, ...a.holes])
  const tb = segmentTree([b.outer, ...b.holes])
  const boundaries = closest(ta, tb)
  if (boundaries.distance === 0) return boundaries
  // apart at their boundaries: then any one point of an outer contour tells
  const pa = a.outer.segments[0]!.from
  if (insideTree(tb, pa)) return { ...boundaries, distance: 0, first: start(pa), second: start(pa) }
  const pb = b.outer.segments[0]!.from
  if (insideTree(ta, pb)) return { ...boundaries, distance: 0, first: start(pb), second: start(pb) }
  return boundaries
}

/**
 * The thinnest wall of a region: the least distance between two different contours of it, such as a hole and
 * the outline. `undefined` for a region without holes.
 */
export function thinnestWall(region: Region): Separation | undefined {
  if (region.holes.length === 0) return undefined
  const tree = segmentTree([region.outer, ...region.holes])
  return closest(tree, tree)
}

function start(point: Point): Place {
  return { point, contour: 0, segment: 0 }
}

/** The closest pair of edges of two trees; of one tree with itself, the closest pair of different contours. */
function closest(a: SegmentTree, b: SegmentTree): Separation {
  const itself = a === b
  let best: Separation | undefined
  const visit = (i: number, j: number, apart: number): void => {
    if (best !== undefined && !(apart < best.distance)) return
    if (i >= a.leaves && j >= b.leaves) {
      const p = i - a.leaves
      const q = j - b.leaves
      if (itself && a.contours[p] === b.contours[q]) return
      const found = segmentDistance(a.segments[p]!, b.segments[q]!)
      if (best === undefined || found.distance < best.distance) {
        best = {
          distance: found.distance,
          first: place(a, p, found.first),
          second: place(b, q, found.second),
        }
      }
      return
    }
    for (const [c, d, away] of childPairs(i, j)) visit(c, d, away)
  }
  const childPairs = (i: number, j: number): readonly (readonly [number, number, number])[] => {
    const lefts = i >= a.leaves ? [i] : [2 * i, 2 * i + 1]
    const rights = j >= b.leaves ? [j] : [2 * j, 2 * j + 1]
    return lefts
      .flatMap(c => rights.map(d => [c, d, nodeDistance(a, c, b, d)] as const))
      .filter(([c, d, away]) => away < Infinity && !(itself && (c > d || oneContour(a, c, d))))
      .sort((x, y) => x[2] - y[2])
  }
  visit(1, 1, nodeDistance(a, 1, b, 1))
  if (best === undefined) throw new RangeError('a distance is between contours that have edges')
  return best
}

function place(tree: SegmentTree, edge: number, point: Point): Place {
  return { point, contour: tree.contours[edge]!, segment: tree.places[edge]! }
}

/** Whether all edges under two nodes belong to one contour: contours follow one another under the tree. */
function oneContour(tree: SegmentTree, i: number, j: number): boolean {
  return tree.contours[firstEdge(tree, i)] === tree.contours[lastEdge(tree, j)]
}

function firstEdge(tree: SegmentTree, node: number): number {
  let at = node
  while (at < tree.leaves) at *= 2
  return at - tree.leaves
}

function lastEdge(tree: SegmentTree, node: number): number {
  let at = node
  while (at < tree.leaves) at = 2 * at + 1
  return Math.min(at - tree.leaves, tree.segments.length - 1)
}
