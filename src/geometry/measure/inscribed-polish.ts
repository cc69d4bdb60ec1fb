import type { Point, Vector } from '../shape/point.ts'

/** A boundary point near a circle: its distance from the circle's centre and the direction away from it. */
type Contact = { readonly distance: number; readonly away: Vector }

/** A circle that grows by more than a rounding each time needs few steps: each doubles the right digits. */
const mostSteps = 30

/** More than these boundary points do not hold one circle, but for cases where any of them do equally. */
const mostContacts = 12

/**
 * Moves the centre of a circle inside a boundary to where the circle is largest nearby: each step takes the
 * boundary as straight at the contacts and solves for the centre whose nearest contact is farthest.
 *
 * @param nearby the boundary points within `reach` of a point's nearest, each the nearest of its edge
 * @param radiusAt the distance to the boundary, negative outside
 */
export function polishCentre(
  start: Point,
  reach: number,
  nearby: (p: Point, reach: number) => readonly Point[],
  radiusAt: (p: Point) => number,
): Point {
  let best = start
  let radius = radiusAt(start)
  for (let step = 0; step < mostSteps; step++) {
    const contacts = contactsOf(best, nearby(best, reach))
    const move = bestMove(contacts, reach)
    if (move === undefined) return best
    const next = { x: best.x + move.x, y: best.y + move.y }
    const grown = radiusAt(next)
    if (!(grown > radius)) return best
    best = next
    radius = grown
  }
  return best
}

function contactsOf(centre: Point, points: readonly Point[]): readonly Contact[] {
  return points
    .map((p): Contact => {
      const dx = centre.x - p.x
      const dy = centre.y - p.y
      const distance = Math.hypot(dx, dy)
      return { distance, away: { x: dx / distance, y: dy / distance } }
    })
    .filter(c => c.distance > 0)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, mostContacts)
}

/** The move of at most `reach` after which the nearest contact is farthest, or none that is better. */
function bestMove(contacts: readonly Contact[], reach: number): Vector | undefined {
  const after = (u: Vector) =>
    contacts.reduce((least, c) => Math.min(least, c.distance + c.away.x * u.x + c.away.y * u.y), Infinity)
  let best: Vector | undefined
  let most = after({ x: 0, y: 0 })
  const consider = (u: Vector | undefined) => {
    if (u === undefined || !(Math.hypot(u.x, u.y) <= reach)) return
    const least = after(u)
    if (least > most) {
      most = least
      best = u
    }
  }
  contacts.forEach((a, i) => {
    contacts.slice(0, i).forEach((b, j) => {
      // halfway between two contacts that face each other
      const half = (b.distance - a.distance) / 2
      consider({ x: a.away.x * half, y: a.away.y * half })
      for (const c of contacts.slice(0, j)) consider(equalised(a, b, c))
    })
  })
  return best
}

/** The move after which three contacts are equally far. */
function equalised(a: Contact, b: Contact, c: Contact): Vector | undefined {
  const ux = a.away.x - b.away.x
  const uy = a.away.y - b.away.y
  const vx = a.away.x - c.away.x
  const vy = a.away.y - c.away.y
  const det = ux * vy - uy * vx
  if (det === 0) return undefined
  const p = b.distance - a.distance
  const q = c.distance - a.distance
  return { x: (p * vy - uy * q) / det, y: (ux * q - p * vx) / det }
}
