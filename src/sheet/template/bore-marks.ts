import { linesMark, pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { mouthOval, type Oval, ovalContour, rimOval } from '../../model/bore/rim.ts'
import type { Bore } from '../../model/feature.ts'
import { crossReach, holeMarks } from './hole-marks.ts'

/** From the cross to the tip of the arrow that shows the way a rod leans. */
const sightLength = 5
const arrowLength = 1.6
const arrowBreadth = 0.5

/** How far from a hole's centre anything that is drawn of it reaches, in any direction. */
export function boreReach(bore: Bore): number {
  const reach = crossReach(halfWidth(bore))
  return bore.lean === undefined ? reach : reach + sightLength
}

/**
 * A hole as it enters: its ring, of a leaning one the ellipse, the rim of its mouth, the cross on its centre, and of a
 * leaning one the sight line with an arrow the way that a rod in it leans.
 */
export function boreMarks(bore: Bore, subject: string, freehand: boolean): readonly Mark[] {
  const { centre, diameter, lean, mouth } = bore
  if (lean === undefined && mouth === undefined) return holeMarks(centre, diameter.mm / 2, subject, freehand)
  const belongs = { layer: 'drill', subject } as const
  const rims = [rimOval(bore), ...(mouth === undefined ? [] : [mouthOval(bore)])].map(ovalContour)
  const [, ...cross] = holeMarks(centre, halfWidth(bore), subject, freehand)
  return [
    pathMark(belongs, 'drill', rims.slice(0, 1)),
    ...rims.slice(1).map(rim => pathMark(belongs, 'drill', [rim])),
    ...cross,
    ...(lean === undefined ? [] : [sightMark(centre, halfWidth(bore), lean.toward, subject)]),
  ]
}

function halfWidth(bore: Bore): number {
  const off = ({ centre, along }: Oval): number =>
    along + Math.hypot(centre.x - bore.centre.x, centre.y - bore.centre.y)
  return Math.max(bore.diameter.mm / 2, off(rimOval(bore)), off(mouthOval(bore)))
}

function sightMark(centre: Point, half: number, toward: number, subject: string): Mark {
  const from = crossReach(half)
  const at = (forth: number, aside: number): Point => ({
    x: centre.x + Math.cos(toward) * forth - Math.sin(toward) * aside,
    y: centre.y + Math.sin(toward) * forth + Math.cos(toward) * aside,
  })
  const tip = at(from + sightLength, 0)
  const back = from + sightLength - arrowLength
  return linesMark({ layer: 'dimension', subject }, 'thin', [
    [at(half + 0.3, 0), tip],
    [tip, at(back, arrowBreadth)],
    [tip, at(back, -arrowBreadth)],
  ])
}
