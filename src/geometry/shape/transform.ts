import type { Contour, Region } from './contour.ts'
import { apply, type Matrix } from './matrix.ts'
import type { Point } from './point.ts'
import { arcOf, line, type Segment } from './segment.ts'

/**
 * Shapes under a similarity: a shift, turn, mirror or even scale, or any of them composed. Arcs stay arcs, so
 * a map that would make ellipses of them (a skew or uneven scale) is refused.
 *
 * @throws RangeError when `matrix` is no similarity: a fault of the caller, not of a plan
 */
export function transformContour(contour: Contour, matrix: Matrix): Contour {
  return transformWith(matrix)(contour)
}

/**
 * A region under a similarity, its holes with it; as {@link transformContour}.
 *
 * @throws RangeError when `matrix` is no similarity
 */
export function transformRegion(region: Region, matrix: Matrix): Region {
  const move = transformWith(matrix)
  return { outer: move(region.outer), holes: region.holes.map(move) }
}

function transformWith(matrix: Matrix): (contour: Contour) => Contour {
  const factor = similarityFactor(matrix)
  const flips = matrix.a * matrix.d - matrix.b * matrix.c < 0
  return contour => {
    // neighbours share their end points, so every point is moved once and stays shared
    const moved = new Map<Point, Point>()
    const move = (p: Point): Point => {
      const known = moved.get(p)
      if (known !== undefined) return known
      const q = apply(matrix, p)
      moved.set(p, q)
      return q
    }
    const segments = contour.segments.map((s): Segment => {
      const from = move(s.from)
      const to = move(s.to)
      if (s.kind === 'line') return line(from, to, s.tag)
      const turn = flips ? (s.turn === 1 ? -1 : 1) : s.turn
      return arcOf(from, to, move(s.centre), s.radius * factor, turn, s.tag)
    })
    return { segments, closed: contour.closed }
  }
}

/** Rounding of a composed turn stays far below this; a printer's correction (1e-4 and more) far above. */
const similaritySlack = 1e-12

function similarityFactor(m: Matrix): number {
  const along = m.a * m.a + m.b * m.b
  const across = m.c * m.c + m.d * m.d
  const dot = m.a * m.c + m.b * m.d
  if (
    !(along > 0) ||
    Math.abs(along - across) > similaritySlack * along ||
    Math.abs(dot) > similaritySlack * along
  ) {
    throw new RangeError('only a similarity keeps arcs circular')
  }
  return Math.sqrt(along)
}
