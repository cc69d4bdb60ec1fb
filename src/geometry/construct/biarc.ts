import { between, midpoint, type Point, type Vector } from '../shape/point.ts'
import { reverseSegment } from '../shape/reverse.ts'
import { line, type Segment } from '../shape/segment.ts'
import { arcByTangent } from './arc-from.ts'

/**
 * Two arcs that lead from one point to another, leave and arrive in given directions (vectors of length 1) and
 * run smoothly into each other. An arc that would leave its chord by no more than `coincident` is a line.
 * `undefined` when there is no such pair: the points coincide, or the way back is asked for.
 *
 * Source: Bolton, Biarc curves, 1975 (from memory); the joint is the one with both control lengths equal,
 * |v|² / (v·t + √((v·t)² + 2(1 − t₁·t₂)|v|²)) with v from start to end and t = t₁ + t₂.
 */
export function biarc(
  from: Point,
  leaving: Vector,
  to: Point,
  arriving: Vector,
): readonly [Segment, Segment] | undefined {
  const v = between(from, to)
  const square = dot(v, v)
  const along = dot(v, leaving) + dot(v, arriving)
  const spread = 2 * Math.max(0, 1 - dot(leaving, arriving)) * square
  const length = square / (along + Math.sqrt(along * along + spread))
  if (!(length > 0 && length < Infinity)) return undefined
  const joint = midpoint(
    { x: from.x + leaving.x * length, y: from.y + leaving.y * length },
    { x: to.x - arriving.x * length, y: to.y - arriving.y * length },
  )
  const first = half(from, leaving, joint)
  const last = half(to, { x: -arriving.x, y: -arriving.y }, joint)
  return first && last && [first, reverseSegment(last)]
}

function half(from: Point, direction: Vector, to: Point): Segment | undefined {
  const arc = arcByTangent(from, direction, to)
  if (arc.ok) return arc.value
  return arc.fault.reason === 'flat' && dot(between(from, to), direction) > 0 ? line(from, to) : undefined
}

function dot(u: Vector, v: Vector): number {
  return u.x * v.x + u.y * v.y
}
