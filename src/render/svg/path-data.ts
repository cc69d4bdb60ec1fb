import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { type Arc, startAngle, sweep } from '../../geometry/shape/segment.ts'
import { writeMm } from '../write-mm.ts'

/** The upper left corner of the picture; from there SVG counts, y down. */
export type Corner = { readonly left: number; readonly top: number }

/**
 * The widest arc of one command. A reader works the centre out from the ends, and the nearer they are to a half
 * turn the more it makes of their rounding: at r 3000 mm and 180°, 0.000005 mm moves the centre by 0.2 mm; at
 * 90° by 0.000005 mm.
 */
const widestArc = Math.PI / 2

/** A whole number of arcs must not be one more because the sweep came out a rounding too wide. */
const roundingOfSweep = 1e-12

/** The contour as path data with true arcs. */
export function contourData({ segments, closed }: Contour, corner: Corner): string {
  const first = segments[0]
  if (first === undefined) return ''
  const out = [`M${pair(first.from, corner)}`]
  segments.forEach((s, i) => {
    if (s.kind === 'arc') out.push(...arcData(s, corner))
    else if (!(closed && i === segments.length - 1)) out.push(`L${pair(s.to, corner)}`)
  })
  if (closed) out.push('Z')
  return out.join('')
}

function arcData(a: Arc, corner: Corner): readonly string[] {
  const angle = sweep(a)
  const count = Math.max(1, Math.ceil(Math.abs(angle) / widestArc - roundingOfSweep))
  const start = startAngle(a)
  const radius = writeMm(a.radius)
  // y is turned over, so counter-clockwise is what SVG calls sweep 0
  const flags = `0 0 ${a.turn === 1 ? 0 : 1}`
  return Array.from({ length: count }, (_, i) => {
    const at = start + (angle * (i + 1)) / count
    const to =
      i === count - 1
        ? a.to
        : { x: a.centre.x + a.radius * Math.cos(at), y: a.centre.y + a.radius * Math.sin(at) }
    return `A${radius} ${radius} ${flags} ${pair(to, corner)}`
  })
}

/** The circle that two half arcs make; undefined for any other contour. */
export function wholeCircle({ segments, closed }: Contour): { centre: Point; radius: number } | undefined {
  const [a, b] = segments
  if (!closed || segments.length !== 2 || a?.kind !== 'arc' || b?.kind !== 'arc') return undefined
  const same =
    a.centre.x === b.centre.x && a.centre.y === b.centre.y && a.radius === b.radius && a.turn === b.turn
  return same ? { centre: a.centre, radius: a.radius } : undefined
}

function pair(p: Point, corner: Corner): string {
  return `${writeMm(p.x - corner.left)} ${writeMm(corner.top - p.y)}`
}
