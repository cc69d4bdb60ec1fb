import { arcBeziers } from '../../geometry/approximate/beziers.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { placesOfMm } from '../write-mm.ts'
import type { ByteSink } from './byte-sink.ts'

/** The operators that trace a contour: `m`, `l`, `c` and, for a closed one, `h`. */
export function traceContour({ segments, closed }: Contour, out: ByteSink): void {
  const first = segments[0]
  if (first === undefined) return
  putPoint(first.from, out)
  out.addLine('m')
  segments.forEach((s, i) => {
    if (s.kind === 'arc') {
      for (const { control1, control2, to } of arcBeziers(s)) {
        putPoint(control1, out)
        putPoint(control2, out)
        putPoint(to, out)
        out.addLine('c')
      }
    } else if (!(closed && i === segments.length - 1)) {
      putPoint(s.to, out)
      out.addLine('l')
    }
  })
  // closing draws the last straight edge
  if (closed) out.addLine('h')
}

/** A point before its operator. */
function putPoint({ x, y }: Point, out: ByteSink): void {
  out.addDecimal(x, placesOfMm)
  out.addLetters(' ')
  out.addDecimal(y, placesOfMm)
  out.addLetters(' ')
}
