import { pointInRegion } from '../../geometry/measure/inside.ts'
import { nearestOnContour } from '../../geometry/measure/nearest.ts'
import { regionSeparation } from '../../geometry/measure/separation.ts'
import type { Bevel, Chamfer, RoundOver } from '../../model/feature.ts'
import { workedLines } from '../../model/strip.ts'
import { type Cut, isHole } from './cut.ts'

/** An edge that is cut aslant or rounded, with the strip that its face loses. */
export type Eased = Cut & { readonly shape: Bevel | Chamfer | RoundOver }

export function isEasing(shape: Cut['feature']['shape']): shape is Eased['shape'] {
  return shape.kind === 'bevel' || shape.kind === 'chamfer' || shape.kind === 'round-over'
}

/**
 * How much wood is between a cut and an eased edge, in millimetres, where they come nearest in depth; negative where
 * a hole runs into the slope. The strip narrows from its own face down, so that what lies deeper has more.
 */
export function woodToEased(cut: Cut, eased: Eased): number {
  const behind = eased.feature.face === 'back'
  const down = behind ? Math.max(0, eased.to - cut.to) : Math.max(0, cut.from - eased.from)
  const gained = stripWidth(eased.shape, 0, eased) - stripWidth(eased.shape, down, eased)
  if (!isHole(cut)) return regionSeparation(cut.region, eased.region).distance + gained
  const lines = workedLines(eased.region)
  const away = Math.min(...lines.map(line => nearestOnContour(line, cut.centre)?.distance ?? Infinity))
  const inside = pointInRegion(eased.region, cut.centre) !== 'outside'
  return (inside ? -away : away) + gained - cut.radius
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
