import { difference } from '../../geometry/boolean/index.ts'
import { inscribedCircle } from '../../geometry/measure/inscribed-circle.ts'
import { offsetRegions } from '../../geometry/offset/index.ts'
import type { Contour, Region } from '../../geometry/shape/contour.ts'
import { mirrorAcross } from '../../geometry/shape/matrix.ts'
import { withTag } from '../../geometry/shape/segment.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { printable } from '../../number/tolerance.ts'
import type { ChamferPlan, RoundOverPlan } from '../../plan/plan.ts'
import type { Chamfer, Feature, RoundOver } from '../feature.ts'
import type { Size } from '../size.ts'
import { lineOfStrip } from '../strip.ts'
import { featuresAlong, reportNoStrip, reportTooWide, toldApart } from './along-arris.ts'
import { type Arris, arrisBetween } from './arris.ts'
import { type CutBuilder, isKnown, missingSizes, type Resolved, unplaced } from './cut-builder.ts'
import { edgeStrip } from './edge-strip.ts'
import { resolvePositive } from './resolve-size.ts'
import type { Site } from './site.ts'

/** Arrises cut off aslant. */
export const buildChamfer: CutBuilder<ChamferPlan> = (site, cut) => {
  const width = resolvePositive(site.context, cut.width, 'the width')
  const depth = resolvePositive(site.context, cut.depth, 'the depth')
  return easedFeatures(site, cut, { width, depth }, (edge, region, width, depth) => ({
    kind: 'chamfer',
    edge,
    region,
    width,
    depth,
  }))
}

/** Arrises rounded. */
export const buildRoundOver: CutBuilder<RoundOverPlan> = (site, cut) => {
  const radius = resolvePositive(site.context, cut.radius, 'the radius')
  return easedFeatures(site, cut, { width: radius, depth: radius }, (edge, region, radius) => ({
    kind: 'round-over',
    edge,
    region,
    radius,
  }))
}

type Make = (edge: Chamfer['edge'], region: Region, width: Size, depth: Size) => Chamfer | RoundOver

function easedFeatures(
  site: Site,
  cut: ChamferPlan | RoundOverPlan,
  sizes: { readonly width: Resolved; readonly depth: Resolved },
  make: Make,
): readonly Feature[] {
  const { width, depth } = sizes
  if (width === undefined || depth === undefined) return []
  const { edges } = cut
  if (!isKnown(width) || !isKnown(depth)) {
    const named = cut.kind === 'round-over' ? { radius: width } : { width, depth }
    const [{ value: face }] = cut.on
    return [unplaced(cut, cut.id.value, face, missingSizes(named))]
  }
  return cut.on.flatMap((on): readonly Feature[] => {
    if (edges === 'all') {
      const face = on.value
      if (face !== 'front' && face !== 'back') {
        reportAllOf(site, on)
        return []
      }
      const rims = rimStrips(site, face, width.mm)
      if (rims.length === 0) {
        const what = { name: `the ${cut.kind}`, mm: width.mm, source: width.source }
        reportTooWide(site, what, inscribedCircle(site.outline, printable)?.radius ?? 0)
        return []
      }
      const told = cut.on.length > 1 ? [face] : []
      return featuresAlong(cut, [{ face, told, shapes: rims.map(rim => make('all', rim, width, depth)) }])
    }
    return edges.flatMap((edge): readonly Feature[] => {
      const arris = arrisBetween(site, on, edge)
      if (arris === undefined) return []
      const [wide, deep] = arris.turned ? [depth, width] : [width, depth]
      const found = edgeStrip(site, arris, wide.mm)
      if ('why' in found) {
        const what = { name: `the ${cut.kind}`, mm: wide.mm, source: wide.source }
        reportNoStrip(site, found.why, arris, edge, what)
        return []
      }
      const told = toldApart(cut.on, on, edges, edge)
      const shapes = found.strips.map(strip => make(arris.edge, strip, wide, deep))
      return featuresAlong(cut, [{ face: arris.face, told, shapes }])
    })
  })
}

function reportAllOf({ context }: Site, { value, source }: ChamferPlan['on'][0]): void {
  context.report({
    rule: 'no-arris',
    severity: 'error',
    places: [{ source }],
    facts: { face: value.replace('edge:', ''), edge: 'all', why: 'all' },
  })
}

/** The strip along the whole outline, and those round what is inside it: none where it would take the whole face. */
function rimStrips({ outline, extent }: Site, face: Arris['face'], width: number): readonly Region[] {
  const inner = offsetRegions([outline], -width)
  if (!inner.ok || inner.value.length === 0) return []
  const worked = inner.value.map(region => ({
    outer: tagged(region.outer),
    holes: region.holes.map(tagged),
  }))
  const rims = difference([outline], worked)
  if (!rims.ok) return []
  if (face === 'front') return rims.value
  return rims.value.map(rim => transformRegion(rim, mirrorAcross(extent.length / 2)))
}

function tagged({ segments, closed }: Contour): Contour {
  return { segments: segments.map(s => withTag(s, lineOfStrip)), closed }
}
