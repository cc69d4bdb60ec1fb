import { clockwise } from '../../geometry/measure/orient.ts'
import { circle } from '../../geometry/shape/circle.ts'
import { isKnown, missingSizes } from './cut-builder.ts'
import { resolvePositive } from './resolve-size.ts'
import type { ShapeBuilder } from './shape-builder.ts'

/** A disc, or a ring: as long and as wide as its diameter. */
export const buildDisc: ShapeBuilder<'disc'> = (context, plan) => {
  const diameter = resolvePositive(context, plan.diameter, 'the diameter')
  const inside = plan.inside && resolvePositive(context, plan.inside, 'the inside')
  if (diameter === undefined || (plan.inside && inside === undefined)) return undefined
  if (!isKnown(diameter)) return { missing: missingSizes({ diameter }), faults: [] }
  if (isKnown(inside) && inside.mm >= diameter.mm) {
    context.report({
      rule: 'nothing-left',
      severity: 'error',
      places: [{ source: inside.source }],
      facts: {
        what: 'the inside of the ring',
        size: { value: inside.mm, unit: 'mm' },
        limit: { value: diameter.mm, unit: 'mm' },
      },
    })
    return undefined
  }
  const radius = diameter.mm / 2
  const centre = { x: radius, y: radius }
  const outer = circle(centre, radius, 'rim')
  const holes = isKnown(inside) ? [clockwise(circle(centre, inside.mm / 2, 'inside'))] : []
  return {
    kind: plan.inside ? 'ring' : 'disc',
    outline: { outer, holes },
    length: diameter,
    width: diameter,
    edges: [],
    corners: [],
    unknownCorners: inside === 'unknown' ? ['inside'] : [],
    missing: inside === 'unknown' ? [{ kind: 'size', name: 'inside of the ring' }] : [],
    sizeDiffers: [],
  }
}
