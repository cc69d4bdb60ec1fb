import { intersection } from '../../geometry/boolean/index.ts'
import { pointAt } from '../../geometry/measure/along.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { mirrorAcross } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polygon } from '../../geometry/shape/polygon.ts'
import type { Segment } from '../../geometry/shape/segment.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { coincident } from '../../number/tolerance.ts'
import { endOfStrip, lineOfStrip } from '../strip.ts'
import type { Arris } from './arris.ts'
import { type EdgeLine, edgeLine } from './edge-line.ts'
import type { Site } from './site.ts'

/** Stops short of the ends of an edge, in millimetres from its theoretical corners; absent: out through that end. */
export type Stops = { readonly from?: number; readonly to?: number }

/**
 * The strip of the front or back beside a straight edge, `width` wide, as it is seen on that face: as far as there is
 * wood, round corners and slanting ends followed. Why there is none: the edge is curved, or the strip takes the whole
 * breadth of the face.
 */
export function edgeStrip(
  site: Site,
  { face, edge }: Pick<Arris, 'face' | 'edge'>,
  width: number,
  stops: Stops = {},
): { readonly strips: readonly Region[] } | { readonly why: 'curved' | 'too-wide' } {
  const line = edgeLine(site, edge)
  if (line === undefined) return { why: 'curved' }
  const all = intersection([band(site, line, width, stops)], [site.outline])
  if (!all.ok) return { why: 'too-wide' }
  const strips = all.value.filter(region => touches(region, line))
  const isWhole = ({ outer }: Region) => !outer.segments.some(s => s.tag === lineOfStrip && isInside(s, site))
  if (strips.length === 0 || strips.some(isWhole)) return { why: 'too-wide' }
  if (face === 'front') return { strips }
  const turned = mirrorAcross(site.extent.length / 2)
  return { strips: strips.map(strip => transformRegion(strip, turned)) }
}

/** Whether a line of the strip runs through the wood, and not along its far edge. */
function isInside(segment: Segment, { outline }: Site): boolean {
  return pointInRegion(outline, pointAt(segment, 1 / 2)) === 'inside'
}

/** Along the edge, far out over its open ends, where the outline then bounds it. */
function band(site: Site, { from, to, along, inward, open }: EdgeLine, width: number, stops: Stops): Region {
  const { left, right, bottom, top } = regionBounds(site.outline)
  const far = right - left + top - bottom
  const start = stops.from ?? (open.from ? -far : 0)
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const end = length - (stops.to ?? (open.to ? -far : 0))
  const at = (s: number, d: number): Point => ({
    x: from.x + s * along.x + d * inward.x,
    y: from.y + s * along.y + d * inward.y,
  })
  const corners = [at(start, 0), at(end, 0), at(end, width), at(start, width)]
  return { outer: polygon(corners, [undefined, endOfStrip, lineOfStrip, endOfStrip]), holes: [] }
}

/** Whether some of a region's boundary lies on the edge; the rest of the band lies in other limbs of the part. */
function touches({ outer }: Region, { from, inward }: EdgeLine): boolean {
  const off = (p: Point) => Math.abs((p.x - from.x) * inward.x + (p.y - from.y) * inward.y)
  return outer.segments.some(s => s.kind === 'line' && off(s.from) <= coincident && off(s.to) <= coincident)
}
