import { difference } from '../../geometry/boolean/index.ts'
import { tangentAt } from '../../geometry/measure/along.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import { discProtrusion, type Protrusion, protrusion } from '../../geometry/measure/protrusion.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Cut } from '../subject/cut.ts'

/** The cuts that stick out of the wood that they are cut into, with how far and past which edge. */
export function stickingOut(cuts: readonly Cut[], blank: Region): ReadonlyMap<Cut, Protrusion> {
  const out = new Map<Cut, Protrusion>()
  for (const cut of cuts) {
    const found = sticksOut(cut, blank)
    if (found !== undefined) out.set(cut, found)
  }
  return out
}

function sticksOut(cut: Cut, blank: Region): Protrusion | undefined {
  // a strip along an edge is as wide as the wood, and where it is not the model has said so
  if (cut.feature.shape.kind === 'rebate') return undefined
  if (cut.disc) return discProtrusion(cut.disc.centre, cut.disc.radius, blank)
  // a notch may take a rounded corner with it, so it is held against the plain rectangle
  if (cut.feature.shape.kind === 'edge-cut') return protrusion(cut.region, rectangle(regionBounds(blank)))
  return isConvex(blank) ? protrusion(cut.region, blank) : farthestOutside(cut.region, blank)
}

/** Whether the boundary turns one way all round: then what sticks out sticks out by a corner or a bulge. */
function isConvex({ outer: { segments }, holes }: Region): boolean {
  if (holes.length > 0) return false
  return [1, -1].some(way =>
    segments.every((segment, i) => {
      const before = tangentAt(segments.at(i - 1)!, 1)
      const after = tangentAt(segment, 0)
      const turns = way * (before.x * after.y - before.y * after.x) >= -coincident
      return turns && (segment.kind === 'line' || segment.turn === way)
    }),
  )
}

/** Of all that lies outside, the point that is farthest from the wood. */
function farthestOutside(shape: Region, wood: Region): Protrusion | undefined {
  const outside = difference([shape], [wood])
  // what the kernel cannot take apart is measured as it is
  return (outside.ok ? outside.value : [shape])
    .flatMap(region => protrusion(region, wood) ?? [])
    .reduce<Protrusion | undefined>((worst, next) => (next.by > (worst?.by ?? 0) ? next : worst), undefined)
}
