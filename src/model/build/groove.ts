import { intersection } from '../../geometry/boolean/index.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import { mirrorAcross } from '../../geometry/shape/matrix.ts'
import { polygon } from '../../geometry/shape/polygon.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { coincident } from '../../number/tolerance.ts'
import type { GroovePlan } from '../../plan/plan.ts'
import type { Feature } from '../feature.ts'
import { endOfStrip, lineOfStrip } from '../strip.ts'
import { type CutBuilder, described, facesOf, isKnown, missingSizes, unplaced } from './cut-builder.ts'
import type { FaceFrame } from './face-frame.ts'
import { coordinate } from './position.ts'
import { resolvePositive } from './resolve-size.ts'
import { resolveStops } from './run.ts'
import type { Site } from './site.ts'

/** A channel from end to end of a face, or so far as it is stopped; a distance leads to its near side. */
export const buildGroove: CutBuilder<GroovePlan> = (site, cut) => {
  const { context } = site
  const width = resolvePositive(context, cut.width, 'the width')
  const depth = resolvePositive(context, cut.depth, 'the depth')
  const faces = facesOf(site, cut)
  if (faces === undefined || width === undefined || depth === undefined) return []
  return faces.flatMap(({ frame, id }): readonly Feature[] => {
    const along = frame[cut.runs]
    const across = cut.runs === 'along' ? frame.across : frame.along
    const [near, far] = [frame.ruler(along[0]), frame.ruler(along[1])]
    const stops = resolveStops(site, cut, along, Math.abs(far.start - near.start))
    const middle = coordinate(site, frame, cut.at, across, isKnown(width) ? width.mm : 0)
    if (stops === undefined || middle === undefined) return []
    const missing = [
      ...missingSizes({ width, depth }),
      ...('missing' in stops ? [{ kind: 'size' as const, name: stops.missing }] : []),
      ...('missing' in middle ? [middle.missing] : []),
    ]
    if (!isKnown(width) || !isKnown(depth) || 'missing' in stops || 'missing' in middle) {
      return [unplaced(cut, id, frame.id, missing)]
    }
    const stopped = stops.first !== undefined || stops.second !== undefined
    const ends = [
      near.start + near.sign * (stops.first ?? 0),
      far.start + far.sign * (stops.second ?? 0),
    ] as const
    const runs = near.axis
    const band = channel(runs, ends, middle.value, width.mm, {
      first: stops.first !== undefined,
      second: stops.second !== undefined,
    })
    const pieces = onWood(site, frame, band)
    return pieces.map((region, i) => ({
      id: pieces.length === 1 ? id : `${id}.${i + 1}`,
      face: frame.id,
      shape: { kind: 'groove', region, runs, width, depth, stopped },
      ...described(cut),
    }))
  })
}

/** The band between its two ends, its sides and the ends where it stops tagged as lines to work to. */
function channel(
  runs: 'x' | 'y',
  ends: readonly [first: number, second: number],
  middle: number,
  width: number,
  stops: { readonly first: boolean; readonly second: boolean },
): Region {
  const turned = ends[0] > ends[1]
  const [low, high] = turned ? [ends[1], ends[0]] : ends
  const [stopsLow, stopsHigh] = turned ? [stops.second, stops.first] : [stops.first, stops.second]
  const [near, far] = [middle - width / 2, middle + width / 2]
  const end = (stopped: boolean) => (stopped ? endOfStrip : undefined)
  const at = (s: number, t: number) => (runs === 'x' ? { x: s, y: t } : { x: t, y: s })
  const corners = [at(low, near), at(high, near), at(high, far), at(low, far)]
  const tags = [lineOfStrip, end(stopsHigh), lineOfStrip, end(stopsLow)]
  // along y the same order runs clockwise
  return runs === 'x'
    ? { outer: polygon(corners, tags), holes: [] }
    : { outer: polygon([...corners].reverse(), [tags[2], tags[1], tags[0], tags[3]]), holes: [] }
}

/** The stretches of it that lie on the front or back, which may be of any outline; a channel beside the part is left as it is. */
function onWood({ outline, extent }: Site, { id }: FaceFrame, band: Region): readonly Region[] {
  if (id !== 'front' && id !== 'back') return [band]
  const wood = id === 'front' ? outline : transformRegion(outline, mirrorAcross(extent.length / 2))
  if (!liesWithin(regionBounds(band), regionBounds(wood))) return [band]
  const stretches = intersection([band], [wood])
  return stretches.ok && stretches.value.length > 0 ? stretches.value : [band]
}

function liesWithin(inner: Bounds, outer: Bounds): boolean {
  const off = [
    outer.left - inner.left,
    inner.right - outer.right,
    outer.bottom - inner.bottom,
    inner.top - outer.top,
  ]
  return off.every(by => by <= coincident)
}
