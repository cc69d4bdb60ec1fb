import { ellipse } from '../../geometry/construct/ellipse.ts'
import { circle } from '../../geometry/shape/circle.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { dot } from '../../geometry/solid/point3.ts'
import { printable } from '../../number/tolerance.ts'
import type { Bore } from '../feature.ts'
import { onPlane, type Pose } from '../pose.ts'
import { type Axis, pointAlong } from './axis.ts'

/** An ellipse on a face, in millimetres: `along` is half its axis in the direction `angle` (radians), `across` the other. */
export type Oval = {
  readonly centre: Point
  readonly along: number
  readonly across: number
  readonly angle: number
}

/** How far from an ellipse the arcs that stand for it may be. */
const deviation = printable / 10

/**
 * Where the sides of a hole meet its face: the circle of a straight one, of a leaning one an ellipse, longer along
 * the sight line.
 *
 * Source: a cylinder of radius r, cut at the angle a from square, gives half axes r / cos a and r.
 */
export function rimOval({ centre, diameter, lean }: Bore): Oval {
  return cylinderOval(centre, diameter.mm / 2, lean)
}

/** The same of the hole's mouth, where it has one: what is gone of the face. */
export function mouthOval(bore: Bore): Oval {
  const { centre, mouth, lean } = bore
  if (mouth === undefined) return rimOval(bore)
  const radius = mouth.diameter.mm / 2
  if (mouth.kind === 'counterbore' || lean === undefined) return cylinderOval(centre, radius, lean)
  return coneOval(centre, radius, mouth.angle / 2, lean)
}

/** Steeper than this to a face, a bore leaves a furrow in it and no rim: within 10° along the face. */
const steepest = Math.sin((10 * Math.PI) / 180)

/**
 * Where a cylinder about an axis meets a face, whichever that is: where a bore comes out, for instance. Nothing where it
 * runs along the face.
 */
export function ovalOn(face: Pose, { from, into }: Axis, radius: number): Oval | undefined {
  const { origin, right, up, out } = face
  const steep = dot(into, out)
  if (Math.abs(steep) < steepest) return undefined
  const away = { x: origin.x - from.x, y: origin.y - from.y, z: origin.z - from.z }
  const centre = onPlane(face, pointAlong({ from, into }, dot(away, out) / steep))
  const angle = Math.atan2(dot(into, up), dot(into, right))
  return { centre, along: radius / Math.abs(steep), across: radius, angle }
}

/** An ellipse as arcs within a tenth of what can be printed; equal axes are a circle, and so is what is as small as a dot. */
export function ovalContour({ centre, along, across, angle }: Oval): Contour {
  if (along === across) return circle(centre, along)
  const made = ellipse(centre, along, across, angle, deviation)
  if (made.ok) return made.value
  if (Math.abs(along - across) <= 2 * deviation) return circle(centre, (along + across) / 2)
  throw new RangeError(`an ellipse of ${along} × ${across} mm cannot be followed with arcs`)
}

function cylinderOval(centre: Point, radius: number, lean: Bore['lean']): Oval {
  if (lean === undefined) return { centre, along: radius, across: radius, angle: 0 }
  return { centre, along: radius / Math.cos(lean.angle), across: radius, angle: lean.toward }
}

/**
 * Where a leaning cone meets the face: it is as wide as its radius R where the axis passes the face, and wider on the
 * side that it leans to. With s along the sight line from the axis and w across it, a point of the face is at the
 * height s·sin a over the middle, so
 *
 *      (s·cos a)² + w² = (R + s·sin a·tan b)²      a: the lean, b: half the cone's angle, a + b < 90°
 *
 * which is an ellipse about s = R·sin a·tan b / k with half axes R·cos a / k and R·cos a / √k, where
 * k = cos² a − sin² a·tan² b.
 */
function coneOval(
  { x, y }: Point,
  radius: number,
  half: number,
  { angle, toward }: NonNullable<Bore['lean']>,
): Oval {
  const cos = Math.cos(angle)
  const widening = Math.sin(angle) * Math.tan(half)
  const k = cos * cos - widening * widening
  const off = (radius * widening) / k
  return {
    centre: { x: x + off * Math.cos(toward), y: y + off * Math.sin(toward) },
    along: (radius * cos) / k,
    across: (radius * cos) / Math.sqrt(k),
    angle: toward,
  }
}
