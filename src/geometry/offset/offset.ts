import { signedArea } from '../measure/area.ts'
import type { Contour, Region } from '../shape/contour.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import type { Segment } from '../shape/segment.ts'
import { addPiece, emptyPieces, type OffsetPieces } from './offset-pieces.ts'
import { type JoinOptions, type PathOptions, usualMitreLimit } from './options.ts'
import { emptyCurve, type PackedCurve } from './packed-curve.ts'
import { appendRawChain, type ChainStyle } from './raw-chain.ts'
import { trimRawCurve } from './trim-raw-curve.ts'

/**
 * Regions grown (`delta` > 0, outward, holes shrink) or shrunk (`delta` < 0, inward, holes grow) by |delta|
 * millimetres. Arcs stay arcs, edges keep the tag of the edge they come from. What splits comes back as several
 * regions, what closes as fewer, what vanishes not at all: the result may be empty.
 *
 * With round joins the result is the set of points nearer to the regions than `delta`, or, shrinking, of the
 * points in them that lie farther than |delta| from their boundary. The direction in which a contour runs
 * carries no meaning; regions may touch and, when growing, overlap.
 *
 * Fails with reason `not-finite` when a coordinate or `delta` is no finite number, with `mitre-limit` when that
 * is below 1, and with `unresolved` when crossings contradict each other.
 */
export function offsetRegions(
  regions: readonly Region[],
  delta: number,
  options: JoinOptions = {},
): Outcome<readonly Region[]> {
  const input = { regions, delta, options }
  const wrong = wrongStyle(delta, options)
  if (wrong !== undefined) return failure({ operation: 'offsetRegions', ...wrong, input })
  if (delta === 0) return success(regions)
  const raw = createRaw({ delta, join: options.join ?? 'round', mitreLimit: limitOf(options), end: 'round' })
  for (const region of regions) {
    addClosed(raw, region.outer, signedArea(region.outer) < 0)
    for (const hole of region.holes) addClosed(raw, hole, signedArea(hole) > 0)
  }
  return trimRawCurve(raw.curve, raw.edges, options.joinTag, { operation: 'offsetRegions', input })
}

/** {@link offsetRegions} of a single region. */
export function offsetRegion(
  region: Region,
  delta: number,
  options: JoinOptions = {},
): Outcome<readonly Region[]> {
  return offsetRegions([region], delta, options)
}

/**
 * The band of points within `distance` millimetres of a path, on both sides of it. An open path is closed at
 * its ends as `options.end` says; a closed one gives a band with a hole, or without where the inside is all
 * taken up. With round joins and ends it holds exactly the points nearer to the path than `distance`.
 *
 * Fails as {@link offsetRegions} does, and with `distance` when that is not positive.
 */
export function offsetPath(
  path: Contour,
  distance: number,
  options: PathOptions = {},
): Outcome<readonly Region[]> {
  const input = { path, distance, options }
  const operation = 'offsetPath'
  const wrong = wrongStyle(distance, options)
  if (wrong !== undefined) return failure({ operation, ...wrong, input })
  if (!(distance > 0)) return failure({ operation, reason: 'distance', facts: { distance }, input })
  const raw = createRaw({
    delta: distance,
    join: options.join ?? 'round',
    mitreLimit: limitOf(options),
    end: options.end ?? 'round',
  })
  if (path.closed) {
    addClosed(raw, path, false)
    addClosed(raw, path, true)
  } else addOpen(raw, path)
  return trimRawCurve(raw.curve, raw.edges, options.joinTag, { operation, input })
}

function wrongStyle(
  delta: number,
  options: JoinOptions,
): { reason: string; facts: Record<string, number> } | undefined {
  if (!Number.isFinite(delta)) return { reason: 'not-finite', facts: { delta } }
  const mitreLimit = limitOf(options)
  return mitreLimit >= 1 ? undefined : { reason: 'mitre-limit', facts: { mitreLimit } }
}

function limitOf(options: JoinOptions): number {
  return options.mitreLimit ?? usualMitreLimit
}

/** A raw curve being built, and the edges it comes from by source number. */
type Raw = {
  readonly curve: PackedCurve
  readonly edges: Segment[]
  readonly style: ChainStyle
}

function createRaw(style: ChainStyle): Raw {
  return { curve: emptyCurve(64), edges: [], style }
}

function addClosed(raw: Raw, contour: Contour, backwards: boolean): void {
  const pieces = emptyPieces(contour.segments.length)
  addEdges(raw, pieces, contour.segments, backwards)
  appendRawChain(raw.curve, pieces, [], raw.style)
}

/** There and back again, so that the right of travel is first one side of the path and then the other. */
function addOpen(raw: Raw, path: Contour): void {
  const pieces = emptyPieces(2 * path.segments.length)
  addEdges(raw, pieces, path.segments, false)
  const there = pieces.count
  addEdges(raw, pieces, path.segments, true)
  if (there > 0) appendRawChain(raw.curve, pieces, [there - 1, pieces.count - 1], raw.style)
}

function addEdges(raw: Raw, pieces: OffsetPieces, segments: readonly Segment[], backwards: boolean): void {
  const { edges, style } = raw
  const n = segments.length
  for (let k = 0; k < n; k++) {
    const edge = segments[backwards ? n - 1 - k : k]!
    addPiece(pieces, edge, edges.length, backwards, style.delta)
    edges.push(edge)
  }
}
