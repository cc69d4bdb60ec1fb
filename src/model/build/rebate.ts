import { type FaceName, isSide } from '../../finding/face-name.ts'
import { faceDirections } from '../../plan/face-directions.ts'
import type { RebatePlan } from '../../plan/plan.ts'
import type { Feature, Missing } from '../feature.ts'
import { featuresAlong, reportCurved, reportNoStrip, toldApart } from './along-arris.ts'
import { arrisBetween } from './arris.ts'
import { type CutBuilder, isKnown, missingSizes, unplaced } from './cut-builder.ts'
import { edgeLine } from './edge-line.ts'
import { edgeStrip, type Stops } from './edge-strip.ts'
import { resolvePositive } from './resolve-size.ts'
import { resolveStops, type Stopped } from './run.ts'
import type { Site } from './site.ts'

/** A step along an edge, from end to end of it or so far as it is stopped. */
export const buildRebate: CutBuilder<RebatePlan> = (site, cut) => {
  const { context } = site
  const width = resolvePositive(context, cut.width, 'the width')
  const depth = resolvePositive(context, cut.depth, 'the depth')
  return cut.on.flatMap((on): readonly Feature[] => {
    const arris = arrisBetween(site, on, cut.edge)
    if (arris === undefined || width === undefined || depth === undefined) return []
    const told = toldApart(cut.on, on, [cut.edge], cut.edge)
    const stops = stopsAlong(site, cut, arris.edge)
    if (stops === undefined) return []
    if (stops === 'curved') {
      reportCurved(site, arris.edge, (arris.turned ? on : cut.edge).source)
      return []
    }
    // on the front or back the step is as wide as it is deep into the edge, where the plan stands on that
    const [wide, deep] = arris.turned ? [depth, width] : [width, depth]
    const missing: readonly Missing[] = [
      ...missingSizes({ width, depth }),
      ...('missing' in stops ? [{ kind: 'size' as const, name: stops.missing }] : []),
    ]
    if (!isKnown(wide) || !isKnown(deep) || 'missing' in stops) {
      return [unplaced(cut, [cut.id.value, ...told].join('.'), arris.face, missing)]
    }
    const found = edgeStrip(site, arris, wide.mm, stops)
    if ('why' in found) {
      const what = { name: 'the width of the rebate', mm: wide.mm, source: wide.source }
      reportNoStrip(site, found.why, arris, cut.edge, what)
      return []
    }
    const stopped = stops.from !== undefined || stops.to !== undefined
    const shapes = found.strips.map(
      region => ({ kind: 'rebate', edge: arris.edge, region, width: wide, depth: deep, stopped }) as const,
    )
    return featuresAlong(cut, [{ face: arris.face, told, shapes }])
  })
}

/** The stops as they stand on the edge's own line, which runs with the wood to its left. */
function stopsAlong(
  site: Site,
  cut: RebatePlan,
  edge: FaceName,
): Stops | { readonly missing: string } | 'curved' | undefined {
  const line = edgeLine(site, edge)
  if (line === undefined) return 'curved'
  const length = Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y)
  const stops = resolveStops(site, cut, directionOf(edge), length)
  if (stops === undefined || 'missing' in stops) return stops
  return startsFirst(site, edge) ? ends(stops.first, stops.second) : ends(stops.second, stops.first)
}

function ends(from: Stopped['first'], to: Stopped['second']): Stops {
  return { ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) }
}

/** The two sides that a cut along an edge of the front leads to. */
function directionOf(edge: FaceName) {
  const { along, across } = faceDirections(edge)
  return edge === 'left' || edge === 'right' ? across : along
}

/** Whether an edge's line begins at the side that its direction begins with. */
function startsFirst(site: Site, edge: FaceName): boolean {
  if (isSide(edge)) return edge === 'bottom' || edge === 'right'
  return site.frame(edge)?.ruler('start').start === 0
}
