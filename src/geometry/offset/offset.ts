import { coincident } from '../../number/tolerance.ts'
import { createMemory, type Memory } from '../boolean/memory.ts'
import type { Contour, Region } from '../shape/contour.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { type JoinOptions, type PathOptions, usualMitreLimit } from './options.ts'
import type { ChainStyle } from './raw-chain.ts'
import { type RawCurve, rawPath, rawRegions } from './raw-curve.ts'
import { trimRawCurve } from './trim-raw-curve.ts'

/**
 * Regions grown (`delta` > 0: outward, holes shrink) or shrunk (`delta` < 0: inward, holes grow) by |delta|
 * millimetres. Arcs stay arcs; the offset of an edge keeps its tag. What splits comes back as several regions,
 * what closes as fewer, what vanishes not at all: the result may be empty. A `delta` no greater than
 * `coincident` changes nothing.
 *
 * With round joins the result is the set of points nearer to the regions than `delta`, or, shrinking, of the
 * points in them that lie farther than |delta| from their boundary; its boundary keeps the distance within
 * `printable`/10. The direction in which a contour runs carries no meaning. No contour crosses itself or
 * another; growing, regions may touch and overlap.
 *
 * Fails with reason `not-finite` when a coordinate or `delta` is no finite number, with `mitre-limit` when that
 * is below 1, and with the reason of the arrangement when its crossings contradict each other.
 *
 * @param memory to work in, for who makes many: `createMemory()`; the same for the other two
 */
export function offsetRegions(
  regions: readonly Region[],
  delta: number,
  options: JoinOptions = {},
  memory: Memory = createMemory(),
): Outcome<readonly Region[]> {
  const asked = { operation: 'offsetRegions', input: { regions, delta, options } }
  const wrong = wrongStyle(delta, options)
  if (wrong !== undefined) return failure({ ...asked, ...wrong })
  if (Math.abs(delta) <= coincident) return success(regions)
  return resolve(style => rawRegions(regions, style, memory), delta, options, asked)
}

/** {@link offsetRegions} of a single region. */
export function offsetRegion(
  region: Region,
  delta: number,
  options: JoinOptions = {},
  memory?: Memory,
): Outcome<readonly Region[]> {
  return offsetRegions([region], delta, options, memory)
}

/**
 * The band of points within `distance` millimetres of a path, on both sides of it. The path may cross itself.
 * An open one is closed at its ends as `options.end` says; a closed one gives a band with a hole, or none where
 * the inside is all taken up. With round joins and ends the band holds exactly the points nearer to the path
 * than `distance`.
 *
 * Fails as {@link offsetRegions} does, and with `distance` when that is not greater than `coincident`.
 */
export function offsetPath(
  path: Contour,
  distance: number,
  options: PathOptions = {},
  memory: Memory = createMemory(),
): Outcome<readonly Region[]> {
  const asked = { operation: 'offsetPath', input: { path, distance, options } }
  const wrong = wrongStyle(distance, options)
  if (wrong !== undefined) return failure({ ...asked, ...wrong })
  if (!(distance > coincident)) return failure({ ...asked, reason: 'distance', facts: { distance } })
  return resolve(style => rawPath(path, style, memory), distance, options, asked)
}

function wrongStyle(
  delta: number,
  options: JoinOptions,
): { reason: string; facts: Record<string, number> } | undefined {
  if (!Number.isFinite(delta)) return { reason: 'not-finite', facts: { delta } }
  const mitreLimit = options.mitreLimit ?? usualMitreLimit
  return mitreLimit >= 1 ? undefined : { reason: 'mitre-limit', facts: { mitreLimit } }
}

/**
 * By how many times `coincident` the distance is changed in turn where the arrangement at the very distance
 * contradicts itself. Such a contradiction needs several crossings within `coincident` of one another, and a
 * distance as little different as this parts them; it is far within what the result promises.
 */
const nudges = [0, 1, -1, 3, -3]

function resolve(
  build: (style: ChainStyle) => RawCurve,
  delta: number,
  options: PathOptions,
  asked: { readonly operation: string; readonly input: unknown },
): Outcome<readonly Region[]> {
  const { join = 'round', end = 'round', mitreLimit = usualMitreLimit, joinTag } = options
  let first: Outcome<readonly Region[]> | undefined
  for (const nudge of nudges) {
    const style = { delta: delta + nudge * coincident, join, end, mitreLimit }
    const outcome = trimRawCurve(build(style), joinTag, asked)
    if (outcome.ok) return outcome
    first ??= outcome
  }
  return first!
}
