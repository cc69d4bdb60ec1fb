import type { Point } from '../../src/geometry/shape/point.ts'

/**
 * What a finished file shows, as an independent reader finds it: all transforms applied, millimetres from the
 * lower left corner of the paper, y up. The same for PDF and SVG.
 */
export type ReadBack = {
  readonly width: number
  readonly height: number
  readonly chains: readonly ReadChain[]
  readonly texts: readonly ReadText[]
}

/** An edge as a function from 0 to 1, which is all that a comparison needs to know of it. */
export type ReadCurve = { readonly kind: 'line' | 'curve'; readonly at: (t: number) => Point }

/** Edges that hang together, and how they are painted. A fill has no width. */
export type ReadChain = {
  readonly paint: 'stroke' | 'fill'
  readonly curves: readonly ReadCurve[]
  readonly closed: boolean
  readonly width: number
  readonly dashes: readonly number[]
  /** Names of the groups around it, outermost first, where the format has any. */
  readonly groups: readonly string[]
}

/** A line of text: its words, and either the ends of its base line or the points of its outlines. */
export type ReadText = {
  readonly text: string
  readonly groups: readonly string[]
  readonly place:
    | { readonly kind: 'base-line'; readonly start: Point; readonly end: Point }
    | { readonly kind: 'outlines'; readonly points: readonly Point[] }
}

/** An affine map as PDF and SVG write it. */
export type Six = readonly [number, number, number, number, number, number]

export const unmoved: Six = [1, 0, 0, 1, 0, 0]

/** The map that does `inner` first, then `outer`. */
export function after(outer: Six, inner: Six): Six {
  const [a, b, c, d, e, f] = outer
  const [p, q, r, s, t, u] = inner
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f]
}

export function moved([a, b, c, d, e, f]: Six, p: Point): Point {
  return { x: a * p.x + c * p.y + e, y: b * p.x + d * p.y + f }
}

/** How much a map makes of a length on average: what line widths and dashes follow. */
export function magnification([a, b, c, d]: Six): number {
  return Math.sqrt(Math.abs(a * d - b * c))
}

export function straight(from: Point, to: Point): ReadCurve {
  return {
    kind: 'line',
    at: t => ({ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }),
  }
}

/** A cubic Bézier curve by its Bernstein polynomials. */
export function cubic(p0: Point, p1: Point, p2: Point, p3: Point): ReadCurve {
  const mix = (t: number, a: number, b: number, c: number, d: number): number => {
    const s = 1 - t
    return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d
  }
  return {
    kind: 'curve',
    at: t => ({ x: mix(t, p0.x, p1.x, p2.x, p3.x), y: mix(t, p0.y, p1.y, p2.y, p3.y) }),
  }
}

/** The curve as another frame sees it. */
export function movedCurve(m: Six, curve: ReadCurve): ReadCurve {
  return { kind: curve.kind, at: t => moved(m, curve.at(t)) }
}
