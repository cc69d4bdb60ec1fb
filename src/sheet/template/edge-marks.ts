import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Board } from '../label/board.ts'
import { datumExtent, datumTriangle, faceMarkExtent, faceMarks } from './face-marks.ts'

/** Whether a point lies on the wood that is left when everything is cut. */
export type OnWood = (p: Point) => boolean

/**
 * The loop and V on the face edge, as large as there is room for. They touch the edge, so only what is above them
 * has to be clear; and the edge has to be there.
 */
export function putFaceMarks(
  board: Board,
  area: Bounds,
  faceEdge: 'top' | 'bottom',
  onWood: OnWood,
): boolean {
  const up = faceEdge === 'bottom' ? 1 : -1
  const edge = faceEdge === 'bottom' ? area.bottom : area.top
  return [1, 0.75, 0.5].some(size => {
    const width = faceMarkExtent.width * size
    const height = faceMarkExtent.height * size
    const foot = edge + up * lift
    const stands = ({ x }: Point): boolean =>
      [-1, 0, 1].every(i => onWood({ x: x + (i * width) / 2, y: foot }))
    const marksAt = ({ x }: Point): readonly Mark[] =>
      faceMarks({ x, y: edge + (up * height) / 2 }, size, faceEdge)
    const middles = spots(area.left + width, area.right - width).map(x => ({
      x,
      y: edge + up * (lift + height / 2),
    }))
    return board.place(middles, { width, height: height - lift }, area, marksAt, stands) !== undefined
  })
}

/** The triangle on the reference end: 1 the end that lies at the right, −1 at the left. */
export function putDatum(board: Board, area: Bounds, end: 1 | -1, onWood: OnWood): boolean {
  const { width, height } = datumExtent
  const edge = end === 1 ? area.right : area.left
  const stands = ({ y }: Point): boolean => onWood({ x: edge - end * lift, y })
  const middles = spots(area.bottom + height, area.top - height).map(y => ({
    x: edge - end * (lift + width / 2),
    y,
  }))
  const marksAt = ({ y }: Point): readonly Mark[] => [datumTriangle({ x: edge - (end * width) / 2, y }, end)]
  return board.place(middles, { width: width - lift, height }, area, marksAt, stands) !== undefined
}

/** What stands on an edge is tested this far above it, so that the edge itself does not count as touched. */
const lift = 1.1

/** Places along a stretch: a third of the way, where marks are looked for, then everywhere. */
function spots(from: number, to: number): readonly number[] {
  if (to < from) return [(from + to) / 2]
  const steps = 24
  return Array.from(
    { length: steps + 1 },
    (_, i) => from + (((i + steps / 3) % (steps + 1)) / steps) * (to - from),
  )
}
