import { arcBeziers } from '../../geometry/approximate/beziers.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { writeMm } from '../write-mm.ts'

/** The operators that trace a contour: `m`, `l`, `c` and, for a closed one, `h`. */
export function traceContour({ segments, closed }: Contour, out: string[]): void {
  const first = segments[0]
  if (first === undefined) return
  out.push(`${pair(first.from)} m`)
  segments.forEach((s, i) => {
    if (s.kind === 'arc') {
      for (const c of arcBeziers(s)) out.push(`${pair(c.control1)} ${pair(c.control2)} ${pair(c.to)} c`)
    } else if (!(closed && i === segments.length - 1)) {
      out.push(`${pair(s.to)} l`)
    }
  })
  // closing draws the last straight edge
  if (closed) out.push('h')
}

function pair(p: Point): string {
  return `${writeMm(p.x)} ${writeMm(p.y)}`
}
