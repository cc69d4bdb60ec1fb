import { fillMark, linesMark, pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { circle } from '../../geometry/shape/circle.ts'
import type { Point } from '../../geometry/shape/point.ts'

/** From the centre to where the lines of the cross begin, so that the centre itself stays free to be seen and pricked. */
const crossGap = 0.9
/** How far the cross reaches out of the ring: enough to be found again when the ring is bored away. */
const crossBeyond = 1.8
/** Of the dot that takes the point of an awl. */
const dotRadius = 0.2

/** How far from a hole's centre its cross reaches. */
export function crossReach(radius: number): number {
  return Math.max(radius, crossGap) + crossBeyond
}

/** The four lines of a cross, which stop short of the centre and reach out of the ring. */
export function crossArms(centre: Point, radius: number): readonly (readonly [Point, Point])[] {
  const far = crossReach(radius)
  const arm = (dx: number, dy: number) =>
    [
      { x: centre.x + dx * crossGap, y: centre.y + dy * crossGap },
      { x: centre.x + dx * far, y: centre.y + dy * far },
    ] as const
  return [arm(1, 0), arm(0, 1), arm(-1, 0), arm(0, -1)]
}

/**
 * A hole to bore: the ring of its true diameter, a fine cross that stops short of the centre, and where it is bored
 * freehand a dot to prick.
 */
export function holeMarks(
  centre: Point,
  radius: number,
  subject: string,
  freehand: boolean,
): readonly Mark[] {
  const belongs = { layer: 'drill', subject } as const
  return [
    pathMark(belongs, 'drill', [circle(centre, radius)]),
    linesMark(belongs, 'thin', crossArms(centre, radius)),
    ...(freehand ? [fillMark(belongs, [{ outer: circle(centre, dotRadius), holes: [] }])] : []),
  ]
}
