import { biarc } from '../geometry/construct/biarc.ts'
import { unit } from '../geometry/measure/along.ts'
import { nearestOnSegment } from '../geometry/measure/nearest.ts'
import type { Contour } from '../geometry/shape/contour.ts'
import { between, distance, type Point, type Vector } from '../geometry/shape/point.ts'
import { line, type Segment, withEnds } from '../geometry/shape/segment.ts'
import { coincident } from '../number/tolerance.ts'
import type { Laid } from './lay-out.ts'
import { type Outline, type OutlineStep, placeOutline } from './outline.ts'

/**
 * The outlines of a laid line of text as closed contours of lines and arcs, in millimetres from the start of its base
 * line, nowhere farther than `maxDeviation` from the letters.
 */
export function letterContours({ glyphs, size }: Laid, maxDeviation: number): readonly Contour[] {
  return glyphs.flatMap(({ glyph, x }) => contoursOf(placeOutline(glyph.outline, size, x, 0), maxDeviation))
}

function contoursOf(outline: Outline, maxDeviation: number): readonly Contour[] {
  const contours: Contour[] = []
  let start: Point | undefined
  let at: Point | undefined
  let segments: Segment[] = []
  const finish = (): void => {
    if (start !== undefined && at !== undefined && distance(at, start) > coincident)
      segments.push(line(at, start))
    if (segments.length > 1) contours.push(closed(segments))
    segments = []
  }
  for (const step of outline) {
    if (step.kind === 'close') {
      finish()
      at = start
      continue
    }
    if (step.kind === 'move' || at === undefined) {
      finish()
      start = at = step.to
      continue
    }
    if (distance(at, step.to) <= coincident) continue
    const curved = step.kind === 'quadratic' || step.kind === 'cubic'
    segments.push(...(curved ? follow(cubicOf(at, step), maxDeviation, deepest) : [line(at, step.to)]))
    at = step.to
  }
  finish()
  return contours
}

/** Neighbours share their end point; where a letter comes back to its start, that is the start itself. */
function closed(segments: readonly Segment[]): Contour {
  const starts = segments.map(s => s.from)
  return {
    segments: segments.map((s, i) => withEnds(s, starts[i]!, starts[(i + 1) % starts.length]!)),
    closed: true,
  }
}

type Cubic = readonly [Point, Point, Point, Point]

/** A quadratic curve is a cubic whose handles reach two thirds of the way to its one handle. */
function cubicOf(from: Point, step: Extract<OutlineStep, { kind: 'quadratic' | 'cubic' }>): Cubic {
  if (step.kind === 'cubic') return [from, step.control1, step.control2, step.to]
  const toward = (p: Point): Point => ({
    x: p.x + (2 / 3) * (step.control.x - p.x),
    y: p.y + (2 / 3) * (step.control.y - p.y),
  })
  return [from, toward(from), toward(step.to), step.to]
}

/** A curve is halved at most so often; letters need three or four. */
const deepest = 8

/** Places of a piece at which its deviation is measured. */
const samples = 8

function follow(curve: Cubic, maxDeviation: number, halvings: number): readonly Segment[] {
  const [from, control1, control2, to] = curve
  const leaving = unit(firstDirection([between(from, control1), between(from, control2), between(from, to)]))
  const arriving = unit(firstDirection([between(control2, to), between(control1, to), between(from, to)]))
  const pair = biarc(from, leaving, to, arriving)
  if (pair !== undefined && isNear(curve, pair, maxDeviation)) return pair
  if (halvings === 0) return [line(from, to)]
  const [first, second] = halves(curve)
  return [...follow(first, maxDeviation, halvings - 1), ...follow(second, maxDeviation, halvings - 1)]
}

/** The first that has a length: handles may lie on the ends. */
function firstDirection(directions: readonly Vector[]): Vector {
  return directions.find(({ x, y }) => Math.hypot(x, y) > coincident) ?? directions.at(-1)!
}

function isNear(curve: Cubic, pair: readonly Segment[], maxDeviation: number): boolean {
  for (let i = 1; i < samples; i++) {
    const p = pointOn(curve, i / samples)
    if (!(Math.min(...pair.map(s => nearestOnSegment(s, p).distance)) <= maxDeviation)) return false
  }
  return true
}

function pointOn([a, b, c, d]: Cubic, t: number): Point {
  const u = 1 - t
  const [wa, wb, wc, wd] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t]
  return { x: wa * a.x + wb * b.x + wc * c.x + wd * d.x, y: wa * a.y + wb * b.y + wc * c.y + wd * d.y }
}

/** Source: de Casteljau's construction. */
function halves([a, b, c, d]: Cubic): readonly [Cubic, Cubic] {
  const middle = (p: Point, q: Point): Point => ({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 })
  const [ab, bc, cd] = [middle(a, b), middle(b, c), middle(c, d)]
  const [abc, bcd] = [middle(ab, bc), middle(bc, cd)]
  const whole = middle(abc, bcd)
  return [
    [a, ab, abc, whole],
    [whole, bcd, cd, d],
  ]
}
