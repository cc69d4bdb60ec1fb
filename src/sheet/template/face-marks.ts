import { fillMark, pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import { apply, compose, type Matrix, quarterTurns, scale, shift } from '../../geometry/shape/matrix.ts'
import { polygon, polyline } from '../../geometry/shape/polygon.ts'
import { arc, line } from '../../geometry/shape/segment.ts'
import { transformContour } from '../../geometry/shape/transform.ts'

/**
 * The marks that a joiner pencils on the wood: a loop on the face side whose tail leads to the face edge, and beside
 * it a V whose point stands on that edge. Common practice, no source.
 *
 *        _
 *       ( )
 *        X    \ /
 *       / \    V     both stand on the face edge, at y = 0
 */
const loop = loopContour()
const vee = polyline([
  { x: 3.8, y: 3.2 },
  { x: 5.4, y: 0 },
  { x: 7, y: 3.2 },
])

/** The box of both marks at full size: millimetres, y from the face edge. */
export const faceMarkExtent = { width: 7.6, height: 8 } as const

/** `at` is the middle of the marks' box; `size` 1 is full size. At a top face edge the marks hang from it. */
export function faceMarks(
  at: { x: number; y: number },
  size: number,
  faceEdge: 'top' | 'bottom',
): readonly Mark[] {
  const centred = compose(shift(-faceMarkExtent.width / 2 + 0.4, -faceMarkExtent.height / 2), scale(size))
  const turned = compose(centred, quarterTurns(faceEdge === 'top' ? 2 : 0))
  const placed: Matrix = compose(turned, shift(at.x, at.y))
  return [
    pathMark(
      { layer: 'text', subject: 'face-marks' },
      'wide',
      [loop, vee].map(contour => transformContour(contour, placed)),
    ),
  ]
}

/** A stroke up from the edge, round over the top to the left and down again across itself. */
function loopContour(): Contour {
  const foot = { x: 0, y: 0 }
  const rising = { x: 2.4, y: 6 }
  const radius = 1.3
  const up = unit(rising.x - foot.x, rising.y - foot.y)
  const down = unit(0.45, -0.893)
  // the arc turns counter-clockwise, so its centre lies to the left of the stroke and each end to the right of it
  const centre = { x: rising.x - up.y * radius, y: rising.y + up.x * radius }
  const falling = { x: centre.x + down.y * radius, y: centre.y - down.x * radius }
  const tail = { x: falling.x + down.x * 5.2, y: falling.y + down.y * 5.2 }
  return {
    segments: [line(foot, rising), arc(rising, falling, centre, 1), line(falling, tail)],
    closed: false,
  }
}

function unit(x: number, y: number): { x: number; y: number } {
  const length = Math.hypot(x, y)
  return { x: x / length, y: y / length }
}

/** The reference end is marked with the triangle that drawings give a datum, its base on the end. ISO 5459, from memory. */
export const datumExtent = { width: 2.6, height: 3 } as const

/** `at` is the middle of the triangle's box; `toward` 1 has its base at the right, −1 at the left. */
export function datumTriangle(at: { x: number; y: number }, toward: 1 | -1): Mark {
  const { width, height } = datumExtent
  const corners = [
    { x: toward * (width / 2), y: -height / 2 },
    { x: toward * (width / 2), y: height / 2 },
    { x: -toward * (width / 2), y: 0 },
  ]
  const move = shift(at.x, at.y)
  return fillMark({ layer: 'text', subject: 'reference-end' }, [
    { outer: polygon(corners.map(c => apply(move, c))), holes: [] },
  ])
}
