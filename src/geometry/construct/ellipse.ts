import { coincident } from '../../number/tolerance.ts'
import { circle } from '../shape/circle.ts'
import type { Contour } from '../shape/contour.ts'
import { compose, shift, turn as turned } from '../shape/matrix.ts'
import { type Outcome, success } from '../shape/outcome.ts'
import type { Point } from '../shape/point.ts'
import { arcOf, line, type Segment, withEnds, withTag } from '../shape/segment.ts'
import { transformContour } from '../shape/transform.ts'
import { biarcsOfCurve } from './biarcs.ts'

/**
 * An ellipse as arcs that run smoothly into one another, nowhere farther than `maxDeviation` from it;
 * counter-clockwise. `semiX` and `semiY` are half its axes, the first at `angle` radians counter-clockwise
 * from +x. Millimetres. The ends of its axes are exact, and it is as symmetric as an ellipse. Every arc takes
 * `tag`. Equal axes give a circle.
 *
 * Fails with reason `too-fine` as {@link biarcsOfCurve} does.
 *
 * @throws RangeError when an axis is not a positive number
 */
export function ellipse(
  centre: Point,
  semiX: number,
  semiY: number,
  angle: number,
  maxDeviation: number,
  tag?: string,
): Outcome<Contour> {
  if (!(semiX > 0 && semiX < Infinity && semiY > 0 && semiY < Infinity)) {
    throw new RangeError('an ellipse has positive axes')
  }
  if (Math.abs(semiX - semiY) <= coincident) return success(circle(centre, semiX, tag))
  const quarter = biarcsOfCurve(quarterOf(semiX, semiY), maxDeviation)
  if (!quarter.ok) return quarter
  const whole = wholeOf(quarter.value.segments)
  const tagged = tag === undefined ? whole : whole.map(s => withTag(s, tag))
  const place = compose(turned(angle), shift(centre.x, centre.y))
  return success(transformContour({ segments: tagged, closed: true }, place))
}

/** A quarter of an ellipse about the origin, from the end of its x axis to that of its y axis. */
function quarterOf(semiX: number, semiY: number) {
  return {
    pointAt: (share: number): Point => {
      if (share === 0) return { x: semiX, y: 0 }
      if (share === 1) return { x: 0, y: semiY }
      const t = (share * Math.PI) / 2
      return { x: semiX * Math.cos(t), y: semiY * Math.sin(t) }
    },
    directionAt: (share: number) => {
      // the axes are met square, to the last digit
      if (share === 0) return { x: 0, y: 1 }
      if (share === 1) return { x: -1, y: 0 }
      const t = (share * Math.PI) / 2
      return { x: -semiX * Math.sin(t), y: semiY * Math.cos(t) }
    },
  }
}

/** The quarter and its mirror images, the two arcs that meet at the end of an axis made one. */
function wholeOf(quarter: readonly Segment[]): readonly Segment[] {
  const moved = new Map<Point, Point[]>()
  const image = (p: Point, which: number): Point => {
    const images = moved.get(p) ?? imagesOf(p)
    moved.set(p, images)
    return images[which]!
  }
  const mirrored = (s: Segment, which: number): Segment => {
    // in the second and fourth quarter the piece is run backwards, so all run counter-clockwise
    const backwards = which % 2 === 1
    const from = image(backwards ? s.to : s.from, which)
    const to = image(backwards ? s.from : s.to, which)
    return s.kind === 'line'
      ? line(from, to, s.tag)
      : arcOf(from, to, image(s.centre, which), s.radius, s.turn, s.tag)
  }
  const all = [0, 1, 2, 3].flatMap(which => {
    const pieces = quarter.map(s => mirrored(s, which))
    return which % 2 === 1 ? pieces.reverse() : pieces
  })
  return joinAtAxes(all, quarter.length)
}

/** A point in the four quarters; one on an axis is its own image there. */
function imagesOf({ x, y }: Point): Point[] {
  const first = { x, y }
  const second = x === 0 ? first : { x: -x, y }
  const third = y === 0 ? second : { x: -x, y: -y }
  const fourth = x === 0 ? third : y === 0 ? first : { x, y: -y }
  return [first, second, third, fourth]
}

function joinAtAxes(all: readonly Segment[], each: number): readonly Segment[] {
  const joined: Segment[] = []
  all.forEach((s, i) => {
    const last = joined.at(-1)
    const atAxis = i % each === 0 && last !== undefined
    if (atAxis && last.kind === 'arc' && s.kind === 'arc')
      joined[joined.length - 1] = withEnds(last, last.from, s.to)
    else joined.push(s)
  })
  const first = joined[0]!
  const last = joined.at(-1)!
  if (first.kind !== 'arc' || last.kind !== 'arc') return joined
  return [withEnds(last, last.from, first.to), ...joined.slice(1, -1)]
}
