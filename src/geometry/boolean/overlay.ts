import { coincident } from '../../number/tolerance.ts'
import type { Contour, Region } from '../shape/contour.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { buildBoxTree } from './box-tree.ts'
import { type Contradiction, type Faces, findFaces } from './faces.ts'
import { findCrossings } from './find-crossings.ts'
import { buildGraph, type Graph } from './graph.ts'
import { addContour, addSegment, createPack, type Pack } from './pack.ts'
import { type Edges, splitSegments } from './split.ts'
import { traceRegions } from './trace.ts'

/**
 * How often an arrangement is arranged anew. Snapping moves an edge by up to the snapping distance, which may
 * carry it to another that was clear of it before, or across it; arranging the snapped edges finds that. It is
 * done until nothing moves; two or three rounds do for almost everything.
 */
const rounds = 12

/**
 * The snapping distances, in mm. Where curves that nearly coincide meet in points, every one at another place, an
 * arrangement can contradict itself although nothing moves any more: then, and only then, it is snapped more
 * coarsely.
 */
const snaps = [coincident, 4 * coincident, 16 * coincident]

/**
 * The regions made of packed contours: everywhere the winding numbers of the two operands are such that
 * `inside` says so. A fault's `input` is what the caller names as a case that can be run again.
 */
export function overlay(
  pack: Pack,
  inside: (first: number, second: number) => boolean,
  operation: string,
  input: unknown,
): Outcome<readonly Region[]> {
  let current = pack
  let trouble: Contradiction | undefined
  for (const snap of snaps) {
    for (let round = 1; round <= rounds; round++) {
      if (current.segmentCount === 0) return success([])
      const tree = buildBoxTree(current, snap)
      const crossings = findCrossings(current, tree, snap)
      const edges = splitSegments(current, crossings, snap)
      const graph = buildGraph(current, edges, snap)
      const settled = !crossings.moved || round === rounds
      if (settled) {
        const faces = findFaces(current, edges, graph, tree)
        if (isFaces(faces)) return success(traceRegions(current, edges, graph, faces, inside))
        trouble = faces
      }
      current = repack(current, edges, graph)
      if (settled) break
    }
  }
  return failure({
    operation,
    reason: trouble!.reason,
    facts: { x: trouble!.x, y: trouble!.y, rounds },
    input,
  })
}

function isFaces(found: Faces | Contradiction): found is Faces {
  return 'ring' in found
}

/** The edges of an arrangement as the segments of the next. */
function repack(old: Pack, edges: Edges, graph: Graph): Pack {
  const pack: Pack = {
    ...createPack(edges.count + 1),
    vertexCount: old.vertexCount,
    x: old.x,
    y: old.y,
    begins: old.begins,
    origins: old.origins,
  }
  let contour = 0
  for (let s = 0; s < old.segmentCount; s++) {
    if (old.contourStart[contour] === s) {
      pack.contourStart.push(pack.segmentCount)
      contour++
    }
    for (let e = edges.pieceStart[s]!; e < edges.pieceStart[s + 1]!; e++) {
      const c = graph.chains.of[e]!
      if (graph.standsFor[c] !== c) continue
      const straight = edges.straight[e] === 1
      addSegment(
        pack,
        edges.from[e]!,
        edges.to[e]!,
        old.centreX[s]!,
        old.centreY[s]!,
        straight ? 0 : old.radius[s]!,
        old.turn[s]!,
        graph.first[c]!,
        graph.second[c]!,
        old.source[s]!,
      )
    }
  }
  return pack
}

/**
 * The regions that closed contours of lines and arcs enclose by a rule for their winding numbers. The contours
 * may cross and overlap themselves and each other in any way; a contour adds 1 inside where it runs
 * counter-clockwise and −1 where it runs clockwise. `w => w > 0` keeps what is wound round counter-clockwise
 * (raw offset curves), `w => w !== 0` and `w => (w & 1) === 1` are the non-zero and the even-odd rule. The rule
 * must not hold for 0, the winding number far away.
 */
export function regionsByWinding(
  contours: readonly Contour[],
  inside: (winding: number) => boolean,
): Outcome<readonly Region[]> {
  const pack = createPack(contours.reduce((sum, c) => sum + c.segments.length, 0))
  const operation = 'regionsByWinding'
  for (let i = 0; i < contours.length; i++) {
    const at = addContour(pack, contours[i]!, 0, 1)
    if (at !== -1) return openContour(operation, i, at, contours)
  }
  return overlay(pack, inside, operation, contours)
}

/** The fault of a contour that does not lead back to itself. */
export function openContour(operation: string, contour: number, segment: number, input: unknown) {
  return failure({
    operation,
    reason: 'a contour has a gap after a segment, or a coordinate that is no number',
    facts: { contour, segment },
    input,
  })
}
