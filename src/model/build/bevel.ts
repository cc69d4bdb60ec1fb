import type { BevelPlan } from '../../plan/plan.ts'
import type { Feature } from '../feature.ts'
import type { Size } from '../size.ts'
import { featuresAlong, reportNoStrip, toldApart } from './along-arris.ts'
import { angleWithin } from './angle-within.ts'
import { arrisBetween } from './arris.ts'
import { type CutBuilder, unplaced } from './cut-builder.ts'
import { edgeStrip } from './edge-strip.ts'

/**
 * An end or edge out of square. The part's size is that of its longer face; the other one is shorter by
 * thickness × tan(angle). Source: far end = near end + height·tan(angle), from the right triangle under the slope.
 */
export const buildBevel: CutBuilder<BevelPlan> = (site, cut) => {
  const { context, extent } = site
  const angle = angleWithin(context, cut.angle, 'the angle of the bevel', { above: 0, below: Math.PI / 2 })
  if (angle === undefined) return []
  return cut.on.flatMap((on): readonly Feature[] => {
    const arris = arrisBetween(site, cut.short, on)
    if (arris === undefined) return []
    const told = toldApart([cut.short], cut.short, cut.on, on)
    if (angle === 'unknown') {
      const missing = [{ kind: 'size' as const, name: 'angle' }]
      return [unplaced(cut, [cut.id.value, ...told].join('.'), arris.face, missing)]
    }
    const { source } = cut.angle
    const shorter: Size = { mm: extent.thickness * Math.tan(angle), basis: 'derived', written: '', source }
    const found = edgeStrip(site, arris, shorter.mm)
    if ('why' in found) {
      const what = { name: 'what the bevel takes', mm: shorter.mm, source }
      reportNoStrip(site, found.why, arris, on, what)
      return []
    }
    const shapes = found.strips.map(
      region => ({ kind: 'bevel', edge: arris.edge, region, angle, shorter }) as const,
    )
    return featuresAlong(cut, [{ face: arris.face, told, shapes }])
  })
}
