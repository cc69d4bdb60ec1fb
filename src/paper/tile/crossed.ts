import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Seam } from './seams.ts'
import { type Spare, type SpareKind, spareKinds } from './spare.ts'

/** What seams run through since no position spares it, and how many of each kind. */
export type Crossed = readonly { readonly kind: SpareKind; readonly count: number }[]

export function crossedBy(seams: readonly Seam[], spares: readonly Spare[]): Crossed {
  return spareKinds.flatMap(kind => {
    const crossed = spares.filter(
      spare => spare.kind === kind && seams.some(seam => crosses(seam, spare.box)),
    )
    return crossed.length === 0 ? [] : [{ kind, count: crossed.length }]
  })
}

function crosses({ from, to }: Seam, box: Bounds): boolean {
  const [left, right] = [Math.min(from.x, to.x), Math.max(from.x, to.x)]
  const [bottom, top] = [Math.min(from.y, to.y), Math.max(from.y, to.y)]
  return left < box.right && right > box.left && bottom < box.top && top > box.bottom
}
