import { pointInRegion } from '../../geometry/measure/inside.ts'
import { nearestOnContour } from '../../geometry/measure/nearest.ts'
import { regionSeparation } from '../../geometry/measure/separation.ts'
import type { Bevel, Chamfer, RoundOver } from '../../model/feature.ts'
import { workedLines } from '../../model/strip.ts'
import { type Cut, whereSeen } from './cut.ts'

/** An edge that is cut aslant or rounded, with the strip that its face loses. */
export type Eased = Cut & { readonly shape: Bevel | Chamfer | RoundOver }

export function isEasing(shape: Cut['feature']['shape']): shape is Eased['shape'] {
  return shape.kind === 'bevel' || shape.kind === 'chamfer' || shape.kind === 'round-over'
}

/**
 * How much wood is between a cut and an eased edge, in millimetres, where they come nearest in depth; negative where
 * a disc runs into the slope. The strip narrows from its own face down, so that what lies deeper has more.
 */
export function woodToEased(cut: Cut, eased: Eased): number {
  const [from, to] = whereSeen(cut)
  const down = Math.max(0, eased.feature.face === 'back' ? eased.to - to : from - eased.from)
  const gained = stripWidth(eased.shape, 0, eased) - stripWidth(eased.shape, down, eased)
  if (cut.disc === undefined) return regionSeparation(cut.region, eased.region).distance + gained
  const { centre, radius } = cut.disc
  const lines = workedLines(eased.region)
  const away = Math.min(...lines.map(line => nearestOnContour(line, centre)?.distance ?? Infinity))
  const inside = pointInRegion(eased.region, centre) !== 'outside'
  return (inside ? -away : away) + gained - radius
}

/** How wide the strip is so far down from its face, in millimetres. */
function stripWidth(shape: Eased['shape'], down: number, { from, to }: Cut): number {
  const left = Math.max(0, to - from - down)
  switch (shape.kind) {
    case 'bevel':
      return left * Math.tan(shape.angle)
    case 'chamfer':
      return left * (shape.width.mm / shape.depth.mm)
    case 'round-over': {
      // the quarter circle about the point that lies a radius in and a radius down
      const radius = shape.radius.mm
      return radius - Math.sqrt(Math.max(0, radius * radius - left * left))
    }
  }
}
