import type { Contour } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import type { Segment } from '../../src/geometry/shape/segment.ts'
import { moved, type ReadCurve, type Six } from './read-back.ts'

/** An edge as it should be: where it runs, and how far a point is from it. */
export type ExactEdge = ReadCurve & { readonly distance: (p: Point) => number }

export type Exact = { readonly edges: readonly ExactEdge[]; readonly closed: boolean }

/**
 * A contour as `matrix`, a shift with turns or a mirror, places it. Written apart from the kernel, so that a
 * fault in that is seen here.
 */
export function exactContour({ segments, closed }: Contour, matrix: Six): Exact {
  return { edges: segments.map(s => exactEdge(s, matrix)), closed }
}

function exactEdge(s: Segment, matrix: Six): ExactEdge {
  const from = moved(matrix, s.from)
  const to = moved(matrix, s.to)
  if (s.kind === 'line') return exactLine(from, to)
  const flips = matrix[0] * matrix[3] - matrix[1] * matrix[2] < 0
  return exactArc(from, to, moved(matrix, s.centre), s.radius, (s.turn === 1) !== flips)
}

function exactLine(from: Point, to: Point): ExactEdge {
  const u = { x: to.x - from.x, y: to.y - from.y }
  const square = u.x * u.x + u.y * u.y
  const at = (t: number): Point => ({ x: from.x + t * u.x, y: from.y + t * u.y })
  return {
    kind: 'line',
    at,
    distance: p => {
      const t = square === 0 ? 0 : ((p.x - from.x) * u.x + (p.y - from.y) * u.y) / square
      return apart(p, at(Math.min(1, Math.max(0, t))))
    },
  }
}

function exactArc(
  from: Point,
  to: Point,
  centre: Point,
  radius: number,
  counterClockwise: boolean,
): ExactEdge {
  const direction = (p: Point): number => Math.atan2(p.y - centre.y, p.x - centre.x)
  const start = direction(from)
  const round = (angle: number): number => {
    const full = 2 * Math.PI
    return ((angle % full) + full) % full
  }
  const angle = counterClockwise ? round(direction(to) - start) : -round(start - direction(to))
  const at = (t: number): Point => ({
    x: centre.x + radius * Math.cos(start + t * angle),
    y: centre.y + radius * Math.sin(start + t * angle),
  })
  return {
    kind: 'curve',
    at,
    distance: p => {
      const turned = counterClockwise ? round(direction(p) - start) : round(start - direction(p))
      const within = turned <= Math.abs(angle)
      return within ? Math.abs(apart(p, centre) - radius) : Math.min(apart(p, from), apart(p, to))
    },
  }
}

/** Enough to meet a Bézier curve near where it strays most from its arc. */
const samples = Array.from({ length: 17 }, (_, i) => i / 16)

/** The farthest that the curves stray from the exact edges. */
export function fromExact({ edges }: Exact, curves: readonly ReadCurve[]): number {
  let worst = 0
  for (const curve of curves) {
    for (const t of samples) {
      const p = curve.at(t)
      worst = Math.max(worst, Math.min(...edges.map(e => e.distance(p))))
    }
  }
  return worst
}

/** The farthest that the exact edges are from the curves, so that nothing is left out. */
export function toChain({ edges }: Exact, curves: readonly ReadCurve[]): number {
  const sampled = curves.map(curve => ({ curve, points: samples.map(curve.at) }))
  let worst = 0
  for (const edge of edges) {
    const wanted = edge.kind === 'line' ? [0, 0.5, 1] : samples
    for (const t of wanted) worst = Math.max(worst, distanceTo(sampled, edge.at(t)))
  }
  return worst
}

type Sampled = { readonly curve: ReadCurve; readonly points: readonly Point[] }

/** The distance from a point to the nearest of some curves. */
function distanceTo(sampled: readonly Sampled[], p: Point): number {
  let best = Infinity
  for (const { curve, points } of sampled) {
    if (curve.kind === 'line') {
      best = Math.min(best, exactLine(points[0]!, points.at(-1)!).distance(p))
      continue
    }
    const far = points.map(q => apart(q, p))
    const nearest = far.reduce((least, d, i) => (d < far[least]! ? i : least), 0)
    const [before, after] = [Math.max(0, nearest - 1), Math.min(points.length - 1, nearest + 1)]
    // the curve is nowhere nearer than this: between two samples it is about as long as their distance
    if (far[nearest]! - apart(points[before]!, points[after]!) >= best) continue
    best = Math.min(best, refined(curve, p, samples[before]!, samples[after]!))
  }
  return best
}

/** The least distance between two places on a curve, by thirds. */
function refined(curve: ReadCurve, p: Point, from: number, to: number): number {
  const far = (t: number): number => apart(curve.at(t), p)
  let [low, high] = [from, to]
  for (let i = 0; i < 60; i++) {
    const third = (high - low) / 3
    if (far(low + third) < far(high - third)) high -= third
    else low += third
  }
  return Math.min(far((low + high) / 2), far(from), far(to))
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}
