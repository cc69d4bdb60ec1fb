import { signedArea } from '../measure/area.ts'
import type { Contour, Region } from '../shape/contour.ts'
import type { Segment } from '../shape/segment.ts'
import { addPiece, emptyPieces, type OffsetPieces } from './offset-pieces.ts'
import { emptyCurve, type PackedCurve } from './packed-curve.ts'
import { appendRawChain, type ChainStyle } from './raw-chain.ts'

/** A raw offset curve, and the edges it comes from by source number. */
export type RawCurve = { readonly curve: PackedCurve; readonly edges: readonly Segment[] }

type Draft = { readonly curve: PackedCurve; readonly edges: Segment[]; readonly style: ChainStyle }

/** The raw offset of regions: outer contours counter-clockwise, holes clockwise, so that right is outside. */
export function rawRegions(regions: readonly Region[], style: ChainStyle): RawCurve {
  const count = regions.reduce(
    (sum, r) => r.holes.reduce((all, h) => all + h.segments.length, sum + r.outer.segments.length),
    0,
  )
  const draft = createDraft(count, style)
  for (const region of regions) {
    addClosed(draft, region.outer, signedArea(region.outer) < 0)
    for (const hole of region.holes) addClosed(draft, hole, signedArea(hole) > 0)
  }
  return draft
}

/** The raw curve around a path: of a closed one on each of its sides, of an open one there and back again. */
export function rawPath(path: Contour, style: ChainStyle): RawCurve {
  const draft = createDraft(2 * path.segments.length, style)
  if (path.closed) {
    addClosed(draft, path, false)
    addClosed(draft, path, true)
  } else addOpen(draft, path)
  return draft
}

/** An edge gives one segment and about one more for the corner after it; where that is too few the curve grows. */
const segmentsPerEdge = 2

function createDraft(edges: number, style: ChainStyle): Draft {
  return { curve: emptyCurve(segmentsPerEdge * edges + 16), edges: [], style }
}

function addClosed(draft: Draft, contour: Contour, backwards: boolean): void {
  const pieces = emptyPieces(contour.segments.length)
  addEdges(draft, pieces, contour.segments, backwards)
  appendRawChain(draft.curve, pieces, [], draft.style)
}

/** There and back again, so that the right of travel is first one side of the path and then the other. */
function addOpen(draft: Draft, path: Contour): void {
  const pieces = emptyPieces(2 * path.segments.length)
  addEdges(draft, pieces, path.segments, false)
  const there = pieces.count
  addEdges(draft, pieces, path.segments, true)
  if (there > 0) appendRawChain(draft.curve, pieces, [there - 1, pieces.count - 1], draft.style)
}

function addEdges(
  draft: Draft,
  pieces: OffsetPieces,
  segments: readonly Segment[],
  backwards: boolean,
): void {
  const { edges, style } = draft
  const n = segments.length
  for (let k = 0; k < n; k++) {
    const edge = segments[backwards ? n - 1 - k : k]!
    addPiece(pieces, edge, edges.length, backwards, style.delta)
    edges.push(edge)
  }
}
