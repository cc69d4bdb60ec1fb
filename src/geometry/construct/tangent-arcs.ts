import { coincident } from '../../number/tolerance.ts'
import { circleCircleCrossings, type Disc } from '../measure/carrier.ts'
import { distance, type Point } from '../shape/point.ts'
import { type Arc, arcOf } from '../shape/segment.ts'

/**
 * How an arc touches a circle. `outside`: their centres lie on different sides of the touching point.
 * `around`: the arc's circle goes round the other. `within`: it runs inside the other.
 */
export type Touch = 'outside' | 'around' | 'within'

/** An arc that touches two circles, from the first to the second, the shorter way round. */
export type TangentArc = { readonly arc: Arc; readonly first: Touch; readonly second: Touch }

/**
 * The arcs of a given radius that touch two circles: at most eight. Where the two touching points are opposite
 * each other both halves would do; the counter-clockwise one is given.
 *
 * Source: the arc's centre lies at r + r₁, r − r₁ or r₁ − r from the first circle's, and so from the second's.
 */
export function tangentArcs(a: Disc, b: Disc, radius: number): readonly TangentArc[] {
  const found: TangentArc[] = []
  for (const first of touches(a, radius)) {
    for (const second of touches(b, radius)) {
      const centres = circleCircleCrossings(
        { centre: a.centre, radius: first.away },
        { centre: b.centre, radius: second.away },
      )
      for (const centre of centres) {
        const from = touchingPoint(a, first.touch, centre, radius)
        const to = touchingPoint(b, second.touch, centre, radius)
        if (distance(from, to) <= coincident) continue
        const cross = (from.x - centre.x) * (to.y - centre.y) - (from.y - centre.y) * (to.x - centre.x)
        const turn = cross >= 0 ? 1 : -1
        found.push({ arc: arcOf(from, to, centre, radius, turn), first: first.touch, second: second.touch })
      }
    }
  }
  return found
}

function touches({ radius: other }: Disc, radius: number): readonly { touch: Touch; away: number }[] {
  const ways: { touch: Touch; away: number }[] = [{ touch: 'outside', away: radius + other }]
  if (radius - other > coincident) ways.push({ touch: 'around', away: radius - other })
  if (other - radius > coincident) ways.push({ touch: 'within', away: other - radius })
  return ways
}

/** Where a circle of `radius` about `centre` touches the disc: on the line of centres, at the arc's radius. */
function touchingPoint(disc: Disc, touch: Touch, centre: Point, radius: number): Point {
  const apart = distance(centre, disc.centre)
  const along = (touch === 'within' ? -radius : radius) / apart
  return {
    x: centre.x + (disc.centre.x - centre.x) * along,
    y: centre.y + (disc.centre.y - centre.y) * along,
  }
}
