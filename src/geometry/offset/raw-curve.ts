import { beginRun, type Memory } from '../boolean/memory.ts'
import { signedArea } from '../measure/area.ts'
import type { Contour, Region } from '../shape/contour.ts'
import type { Segment } from '../shape/segment.ts'
import { addPiece, emptyPieces, type OffsetPieces } from './offset-pieces.ts'
import { emptyCurve, type PackedCurve } from './packed-curve.ts'
import { appendRawChain, type ChainStyle } from './raw-chain.ts'

/** A raw offset curve, and the edges it comes from by source number. */
export type RawCurve = {
  readonly curve: PackedCurve
  readonly edges: readonly Segment[]
  /** Room that is no longer needed: at 100,000 edges memory given back is quicker than memory asked for. */
  readonly spare: Float64Array
}

type Draft = {
  readonly curve: PackedCurve
  readonly style: ChainStyle
  /** Used for one chain after the other. */
  readonly pieces: OffsetPieces
}

/**
 * The raw offset of regions: outer contours counter-clockwise, holes clockwise, so that right is outside.
 *
 * @param memory of a run that has ended; the curve is lost when the next one begins
 */
export function rawRegions(regions: readonly Region[], style: ChainStyle, memory: Memory): RawCurve {
  const contours = regions.flatMap(r => [r.outer, ...r.holes])
  const edges = contours.length === 1 ? contours[0]!.segments : contours.flatMap(c => c.segments)
  const longest = contours.reduce((most, c) => Math.max(most, c.segments.length), 0)
  const draft = createDraft(edges.length, longest, style, memory)
  let source = 0
  for (const region of regions) {
    for (const contour of [region.outer, ...region.holes]) {
      const left = contour === region.outer
      addClosed(draft, contour, source, signedArea(contour) > 0 !== left)
      source += contour.segments.length
    }
  }
  return { curve: draft.curve, edges, spare: draft.pieces.data }
}

/** The raw curve around a path: of a closed one on each of its sides, of an open one there and back again. */
export function rawPath(path: Contour, style: ChainStyle, memory: Memory): RawCurve {
  const { segments, closed } = path
  const both = 2 * segments.length
  const draft = createDraft(both, both, style, memory)
  if (closed) {
    addClosed(draft, path, 0, false)
    addClosed(draft, path, 0, true)
  } else addOpen(draft, path)
  return { curve: draft.curve, edges: segments, spare: draft.pieces.data }
}

/** An edge gives one segment and about one more for the corner after it; where that is too few the curve grows. */
const segmentsPerEdge = 2

/** How many bytes an offset takes for each edge, about. */
const bytesEach = 400

function createDraft(edges: number, longest: number, style: ChainStyle, memory: Memory): Draft {
  beginRun(memory, bytesEach * (edges + 8))
  const pieces = emptyPieces(memory, longest)
  return { curve: emptyCurve(memory, segmentsPerEdge * edges + 16), style, pieces }
}

function addClosed(draft: Draft, contour: Contour, source: number, backwards: boolean): void {
  draft.pieces.count = 0
  addEdges(draft, contour.segments, source, backwards)
  appendRawChain(draft.curve, draft.pieces, [], draft.style)
}

/** There and back again, so that the right of travel is first one side of the path and then the other. */
function addOpen(draft: Draft, path: Contour): void {
  const { pieces } = draft
  addEdges(draft, path.segments, 0, false)
  const there = pieces.count
  addEdges(draft, path.segments, 0, true)
  if (there > 0) appendRawChain(draft.curve, pieces, [there - 1, pieces.count - 1], draft.style)
}

/** @param source the source number of the first of the segments */
function addEdges(draft: Draft, segments: readonly Segment[], source: number, backwards: boolean): void {
  const n = segments.length
  for (let i = 0; i < n; i++) {
    const k = backwards ? n - 1 - i : i
    addPiece(draft.pieces, segments[k]!, source + k, backwards, draft.style.delta)
  }
}
