import { along, cross, dot, minus, type Point3, unit3 } from '../../../src/geometry/solid/point3.ts'

/**
 * What is turned about an axis: the profile is a chain of (t, ρ), how far along the axis and how wide there, from the
 * first end of the axis to the last; between its ends lies the body.
 */
export type Turned = {
  readonly from: Point3
  readonly into: Point3
  readonly profile: readonly (readonly [t: number, radius: number])[]
}

/** Who has looked at so many has met bodies whose nearest places are cut away. */
const mostPatches = 20_000

export type Block = { readonly length: number; readonly width: number; readonly thickness: number }

/** The distance lies between the two, in millimetres. */
export type Between = { readonly atLeast: number; readonly atMost: number }

/**
 * How far two turned bodies are apart within a block, by sampling the surface of the one and asking the other, whose
 * distance from a point is known in closed form: that of a polygon in the plane through its axis.
 *
 * The distance from a body changes by no more than one moves, so a patch of the surface whose middle is d away is no
 * nearer than d less its half diagonal. Patches that may be nearer than what was found are quartered until the bound
 * is within `gap`, or nothing can be nearer than `beyond`. What of the patches lies outside the block is left out, and
 * what of the other body does is no answer, though still a bound.
 */
export function sampledDistance(a: Turned, b: Turned, block: Block, gap: number, beyond: number): Between {
  // what lies wholly within the other is not found on its surface
  if (distanceTo(a, b.from).distance === 0) return { atLeast: 0, atMost: 0 }
  let atMost = Infinity
  let atLeast = Infinity
  const start = frame(a)
  const patches: Patch[] = []
  a.profile.slice(1).forEach(([t1, r1], i) => {
    const [t0, r0] = a.profile[i]!
    const wide = Math.max(r0, r1)
    const long = Math.hypot(t1 - t0, r1 - r0)
    const pieces = Math.max(1, Math.ceil(long / Math.max(1, wide)))
    for (let piece = 0; piece < pieces; piece++) {
      for (let turn = 0; turn < 8; turn++) {
        patches.push({
          segment: [t0, r0, t1, r1],
          from: piece / pieces,
          to: (piece + 1) / pieces,
          left: (Math.PI * turn) / 4,
          right: (Math.PI * (turn + 1)) / 4,
        })
      }
    }
  })
  const look = (patches: readonly Patch[]) =>
    patches
      .map(patch => {
        const { point, half } = middleOf(patch, a, start)
        return { patch, point, half, ...distanceTo(b, point) }
      })
      .sort((one, other) => other.distance - one.distance)
  // last in, first out, the nearest first: good answers come early
  const stack = look(patches)
  let left = mostPatches
  for (let next = stack.pop(); next !== undefined; next = stack.pop()) {
    if (left-- === 0) return { atLeast: 0, atMost }
    const { patch, point, half, distance, nearest } = next
    const outside = outsideOf(point, block)
    if (outside > half) continue
    if (outside <= 0 && distance < atMost && outsideOf(nearest, block) <= 1e-9) atMost = distance
    const lower = Math.max(0, distance - half)
    if (lower > beyond || lower >= atMost - gap || half < gap / 4) atLeast = Math.min(atLeast, lower)
    else stack.push(...look(quarters(patch)))
  }
  return { atLeast: Math.min(atLeast, atMost), atMost }
}

type Patch = {
  readonly segment: readonly [t0: number, r0: number, t1: number, r1: number]
  readonly from: number
  readonly to: number
  readonly left: number
  readonly right: number
}

type Frame = { readonly u: Point3; readonly v: Point3 }

function frame({ into }: Turned): Frame {
  const aside = Math.abs(into.x) < 0.6 ? { x: 1, y: 0, z: 0 } : { x: 0, y: 1, z: 0 }
  const u = unit3(cross(into, aside))!
  return { u, v: cross(into, u) }
}

function middleOf(
  { segment, from, to, left, right }: Patch,
  { from: origin, into }: Turned,
  { u, v }: Frame,
) {
  const [t0, r0, t1, r1] = segment
  const share = (from + to) / 2
  const turn = (left + right) / 2
  const radius = r0 + (r1 - r0) * share
  const widest = Math.max(r0 + (r1 - r0) * from, r0 + (r1 - r0) * to)
  const point = along(
    along(along(origin, into, t0 + (t1 - t0) * share), u, radius * Math.cos(turn)),
    v,
    radius * Math.sin(turn),
  )
  const long = (Math.hypot(t1 - t0, r1 - r0) * (to - from)) / 2
  return { point, half: long + (widest * (right - left)) / 2 }
}

function quarters(patch: Patch): readonly Patch[] {
  const { from, to, left, right } = patch
  const share = (from + to) / 2
  const turn = (left + right) / 2
  return [
    { ...patch, to: share, right: turn },
    { ...patch, to: share, left: turn },
    { ...patch, from: share, right: turn },
    { ...patch, from: share, left: turn },
  ]
}

/** How far a point lies outside of a block; less than none inside. */
function outsideOf({ x, y, z }: Point3, { length, width, thickness }: Block): number {
  return Math.max(-x, x - length, -y, y - width, -z, z - thickness)
}

/** From a point to what is turned: in the plane through its axis the distance from the profile's polygon. */
export function distanceTo(
  { from, into, profile }: Turned,
  p: Point3,
): { distance: number; nearest: Point3 } {
  const way = minus(p, from)
  const t = dot(way, into)
  const aside = { x: way.x - into.x * t, y: way.y - into.y * t, z: way.z - into.z * t }
  const out = Math.hypot(aside.x, aside.y, aside.z)
  const outward =
    out > 0 ? { x: aside.x / out, y: aside.y / out, z: aside.z / out } : frame({ from, into, profile }).u
  let best = Infinity
  let [bestT, bestR] = [0, 0]
  const first = profile[0]!
  const last = profile.at(-1)!
  const closed = [[first[0], 0] as const, ...profile, [last[0], 0] as const]
  for (let i = 1; i < closed.length; i++) {
    const [t0, r0] = closed[i - 1]!
    const [t1, r1] = closed[i]!
    // inside of this stretch of the profile
    if (t1 > t0 && t >= t0 && t <= t1 && out <= r0 + ((r1 - r0) * (t - t0)) / (t1 - t0)) {
      return { distance: 0, nearest: p }
    }
    const [dt, dr] = [t1 - t0, r1 - r0]
    const square = dt * dt + dr * dr
    const share = square === 0 ? 0 : Math.max(0, Math.min(1, ((t - t0) * dt + (out - r0) * dr) / square))
    const [nt, nr] = [t0 + dt * share, r0 + dr * share]
    const distance = Math.hypot(t - nt, out - nr)
    if (distance < best) {
      best = distance
      bestT = nt
      bestR = nr
    }
  }
  return { distance: best, nearest: along(along(from, into, bestT), outward, bestR) }
}
