import { holeCircle } from '../../geometry/construct/regular.ts'
import type { HoleCirclePlan } from '../../plan/plan.ts'
import { type CutBuilder, isKnown, missingSizes } from './cut-builder.ts'
import { buildHoles } from './holes.ts'
import { resolveAngle, resolvePositive } from './resolve-size.ts'

export const buildHoleCircle: CutBuilder<HoleCirclePlan> = (site, cut) => {
  const circle = resolvePositive(site.context, cut.circle, 'the circle')
  const start = cut.start === undefined ? 0 : resolveAngle(site.context, cut.start)
  return buildHoles(
    site,
    cut,
    (_, at) => {
      if (circle === undefined || start === undefined) return undefined
      if (!isKnown(circle) || start === 'unknown') return { centres: [] }
      const centres = holeCircle(at, circle.mm, cut.count.value, start)
      return { centres: centres.map(centre => [centre, { pattern: 'circle' }]) }
    },
    missingSizes({ 'diameter of the circle': circle, 'angle of the first hole': start }),
  )
}
