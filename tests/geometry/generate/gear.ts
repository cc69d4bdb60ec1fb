import type { Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { arc, line, type Segment } from '../../../src/geometry/shape/segment.ts'

const pitch = 8
const toothHeight = 4
/** Share of the pitch taken by the tip and by the root; the flanks share the rest. */
const tipShare = 0.375
const rootShare = 0.375

/**
 * A gear-like outline of `teeth` teeth about a centre: for each an arc at the tip, a flank, an arc at the root,
 * a flank. The teeth keep their size (pitch 8 mm, height 4 mm), so the radius grows with their number.
 */
export function gear(teeth: number, centre: Point = { x: 0, y: 0 }): Region {
  const root = (teeth * pitch) / (2 * Math.PI)
  const tip = root + toothHeight
  const step = (2 * Math.PI) / teeth
  const at = (radius: number, angle: number): Point => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
  })
  const flank = ((1 - tipShare - rootShare) / 2) * step
  const segments: Segment[] = []
  const first = at(tip, 0)
  let from = first
  for (let i = 0; i < teeth; i++) {
    const angle = i * step
    const tipEnd = at(tip, angle + tipShare * step)
    const rootStart = at(root, angle + tipShare * step + flank)
    const rootEnd = at(root, angle + step - flank)
    const next = i + 1 === teeth ? first : at(tip, angle + step)
    segments.push(
      arc(from, tipEnd, centre, 1, 'tip'),
      line(tipEnd, rootStart, 'flank'),
      arc(rootStart, rootEnd, centre, 1, 'root'),
      line(rootEnd, next, 'flank'),
    )
    from = next
  }
  return { outer: { segments, closed: true }, holes: [] }
}
