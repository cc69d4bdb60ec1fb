import { fillMark, linesMark, pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { distance, type Point } from '../../geometry/shape/point.ts'
import { polygon } from '../../geometry/shape/polygon.ts'
import { axisOf } from '../../model/bore/axis.ts'
import { mouthOval, ovalContour, ovalOn, rimOval } from '../../model/bore/rim.ts'
import { wayOut } from '../../model/bore/way-through.ts'
import type { Bore, Lean } from '../../model/feature.ts'
import { faceOf, type Solid } from '../../model/part.ts'
import { onPlane } from '../../model/pose.ts'
import { crossGap, crossReach, rimMarks } from './hole-marks.ts'

/** The circle about its centre that all of a bore lies in: its ring or ellipse, and its mouth where that is wider. */
export function boreRadius(bore: Bore): number {
  const reaches = [rimOval(bore), mouthOval(bore)].map(
    ({ centre, along }) => distance(centre, bore.centre) + along,
  )
  return Math.max(...reaches)
}

/** How far from a bore's centre anything that is drawn of it reaches, in any direction. */
export function boreReach(bore: Bore): number {
  const reach = crossReach(boreRadius(bore))
  return bore.lean === undefined ? reach : reach + head.length
}

/**
 * A bore where it enters: its ring or ellipse, its cross, the edge of its mouth, and of one that leans the sight line.
 * `behind`: what is seen is where it comes out, so its mouth is on the far side.
 */
export function boreMarks(bore: Bore, subject: string, freehand: boolean, behind = false): readonly Mark[] {
  const radius = boreRadius(bore)
  const mouthRole = behind ? 'hidden' : 'thin'
  return [
    ...rimMarks(bore.centre, ovalContour(rimOval(bore)), radius, subject, freehand),
    ...(bore.mouth ? [pathMark({ layer: 'drill', subject }, mouthRole, [ovalContour(mouthOval(bore))])] : []),
    ...(bore.lean ? sightLineMarks(bore.centre, bore.lean, radius, subject) : []),
  ]
}

const head = { length: 2.4, half: 0.7 } as const

/** Through the centre, with an arrow the way that a rod in the hole leans; it stands off the ends of the cross. */
function sightLineMarks(centre: Point, { toward }: Lean, reach: number, subject: string): readonly Mark[] {
  const far = crossReach(reach)
  const at = (along: number, across: number): Point => ({
    x: centre.x + along * Math.cos(toward) - across * Math.sin(toward),
    y: centre.y + along * Math.sin(toward) + across * Math.cos(toward),
  })
  const tip = far + head.length
  const arrow = polygon([at(tip, 0), at(far, head.half), at(far, -head.half)])
  return [
    linesMark({ layer: 'drill', subject }, 'thin', [
      [at(-far, 0), at(-crossGap, 0)],
      [at(crossGap, 0), at(far + head.length / 2, 0)],
    ]),
    fillMark({ layer: 'drill', subject }, [{ outer: arrow, holes: [] }]),
  ]
}

/**
 * Where bores that lean come out: on the front, from whatever face, as an edge to be seen; on the back, of those bored
 * from the front, dashed. By another face it does not show here.
 */
export function wayOutMarks(solid: Solid, part: string): readonly Mark[] {
  return solid.features.flatMap(({ id, face, shape }) => {
    if (shape.kind !== 'bore' || !shape.lean || shape.depth !== 'through') return []
    const out = wayOut(solid, { face, shape })
    if (out === undefined) return []
    const belongs = { layer: 'drill', subject: `${part}.${id}` } as const
    const { pose } = solid.faces.front
    if (out.face === 'front') {
      const oval = ovalOn(pose, axisOf(shape, faceOf(solid, face).pose), shape.diameter.mm / 2)
      return oval ? [pathMark(belongs, 'thin', [ovalContour(oval)])] : []
    }
    if (out.face !== 'back' || face !== 'front') return []
    // front and back are parallel, so the bore leaves by the same ellipse as it enters
    const exit = { ...rimOval(shape), centre: onPlane(pose, out.point) }
    return [pathMark(belongs, 'hidden', [ovalContour(exit)])]
  })
}
