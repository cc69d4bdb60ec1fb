import { ellipse } from '../../src/geometry/construct/ellipse.ts'
import { pointAt } from '../../src/geometry/measure/along.ts'
import { enclosingCircle } from '../../src/geometry/measure/enclosing-circle.ts'
import { enclosingRectangle } from '../../src/geometry/measure/enclosing-rectangle.ts'
import { convexHull } from '../../src/geometry/measure/hull.ts'
import { inscribedCircle } from '../../src/geometry/measure/inscribed-circle.ts'
import { regionMoments } from '../../src/geometry/measure/moments.ts'
import { narrowestNeck } from '../../src/geometry/measure/neck.ts'
import { thinnestWall } from '../../src/geometry/measure/separation.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import { polygon } from '../../src/geometry/shape/polygon.ts'
import { line } from '../../src/geometry/shape/segment.ts'
import { picture } from './picture.ts'
import { given, moved, plate } from './shapes.ts'

/** What is measured inside a region, and around it. */
export function drawMeasures(): string {
  const page = picture()
  const region = plate()
  page.wood([region])
  for (const c of [region.outer, ...region.holes]) page.contour(c, 'thick')
  const neck = narrowestNeck(region)!
  const wall = thinnestWall(region)!
  page.segments(
    [line(neck.first.point, neck.second.point), line(wall.first.point, wall.second.point)],
    'signal',
  )
  page.words({ x: neck.at.x + 1.5, y: neck.at.y - 1 }, 'neck', 3, 'start')
  page.words({ x: (wall.first.point.x + wall.second.point.x) / 2, y: wall.first.point.y + 1.5 }, 'wall', 3)
  const room = inscribedCircle(region, 0.001)!
  page.contour(circle(room.centre, room.radius), 'dashed')
  page.words(room.centre, 'largest circle', 2.6)
  page.dot(regionMoments(region).centroid, 0.9, true)

  const outside = moved(region, 92, 0)
  page.wood([outside])
  page.contour(given(convexHull([outside.outer])), 'thick')
  page.contour(polygon(enclosingRectangle([outside.outer])!.corners), 'dashed')
  const round = given(enclosingCircle([outside.outer]))
  page.contour(circle(round.centre, round.radius), 'dotted')
  return page.finish(
    'Measured inside: neck, wall, largest circle, centroid. Around: hull, rectangle, circle',
    190,
  )
}

/** An ellipse as arcs: where one ends and the next begins, coarse and fine. */
export function drawEllipse(): string {
  const page = picture()
  ;[0.5, 0.0005].forEach((deviation, i) => {
    const arcs = given(ellipse({ x: i * 90, y: 0 }, 40, 22, 0, deviation))
    page.contour(arcs, 'thick')
    for (const s of arcs.segments) {
      page.dot(s.from, 0.8)
      if (i === 0 && s.kind === 'arc')
        page.segments([line(s.centre, s.from), line(s.centre, pointAt(s, 1))], 'fine')
    }
    page.words({ x: i * 90, y: -2 }, `${arcs.segments.length} arcs, within ${deviation} mm`, 3.4)
  })
  return page.finish('An ellipse is biarcs within a deviation', 190)
}
