import { coincident } from '../../number/tolerance.ts'
import { signedArea } from '../measure/area.ts'
import type { Contour } from '../shape/contour.ts'
import { distance, type Point } from '../shape/point.ts'
import { arcOf, line, type Segment } from '../shape/segment.ts'
import { halfRange, isFlat, type Pack, pointAt, sourceAt } from './pack.ts'
import { type Edges, originOf } from './split.ts'

/** A contour to be: its half-edges are those of a list from `begin` up to `end`. And the number of the body that it bounds. */
export type Loop = { readonly body: number; readonly begin: number; readonly end: number }

export type Drawn = { readonly contour: Contour; readonly runsLeft: boolean }

/**
 * Turns the half-edges of a loop into a contour: pieces of one segment that follow each other become one again. One that
 * is nowhere wider than `coincident` is none.
 */
export function createPen(pack: Pack, edges: Edges, leaving: Int8Array, halfEdges: Int32Array) {
  const { x, y } = pack
  /** Points made where contours touch: they share them. */
  const shared = new Map<number, Point>()
  const placeOf = (v: number): Point => {
    const known = pointAt(pack, v) ?? shared.get(v)
    if (known !== undefined) return known
    const made = { x: x[v]!, y: y[v]! }
    if (leaving[v] === 2) shared.set(v, made)
    return made
  }
  const endOf = (h: number) => originOf(edges, h ^ 1)

  /** Whether half-edge g carries on what h began, through a vertex that nothing else needs. */
  const carriesOn = (h: number, g: number): boolean => {
    const s = edges.segment[h >> 1]!
    const t = edges.segment[g >> 1]!
    if (pack.source[s] !== pack.source[t] || (h & 1) !== (g & 1)) return false
    return leaving[originOf(edges, g)] !== 2
  }

  return ({ begin, end }: Loop): Drawn | undefined => {
    const n = end - begin
    if (n < 2) return undefined
    let first = begin
    let count = 0
    for (let k = begin; k < end; k++) {
      if (carriesOn(halfEdges[k === begin ? end - 1 : k - 1]!, halfEdges[k]!)) continue
      if (count === 0) first = k
      count++
    }
    // all pieces of one circle, say, carry on the last: they stay as they are
    const whole = count === 0
    const halfEdge = (k: number) => halfEdges[first + k < end ? first + k : first + k - n]!
    const segments = new Array<Segment>(whole ? n : count)
    let made = 0
    // twice the area: surely within `doubt` of this, which nearly always tells what is asked
    let twice = 0
    let doubt = 0
    let length = 0
    const corner = placeOf(originOf(edges, halfEdge(0)))
    let from = corner
    for (let k = 0; k < n; ) {
      const h = halfEdge(k)
      let last = h
      let straight = edges.straight[h >> 1] === 1
      k++
      while (!whole && k < n && carriesOn(last, halfEdge(k))) {
        last = halfEdge(k)
        straight &&= edges.straight[last >> 1] === 1
        k++
      }
      const to = k === n ? corner : placeOf(endOf(last))
      const segment = makeSegment(pack, edges, h, from, to, straight)
      segments[made++] = segment
      twice += (from.x - corner.x) * (to.y - corner.y) - (from.y - corner.y) * (to.x - corner.x)
      const dx = to.x - from.x
      const dy = to.y - from.y
      length += Math.abs(dx) + Math.abs(dy)
      if (segment.kind === 'arc') {
        const range = halfRange * (dx * dx + dy * dy)
        const ux = from.x - segment.centre.x
        const uy = from.y - segment.centre.y
        if (segment.turn * (ux * dy - uy * dx) < 0) doubt = Infinity
        twice += segment.turn * range
        doubt += range
      }
      from = to
    }
    const contour: Contour = { segments, closed: true }
    if (!(Math.abs(twice) - doubt > coincident * length)) twice = 2 * signedArea(contour)
    if (Math.abs(twice) <= coincident * length) return undefined
    return { contour, runsLeft: twice > 0 }
  }
}

function makeSegment(
  pack: Pack,
  edges: Edges,
  h: number,
  from: Point,
  to: Point,
  straight: boolean,
): Segment {
  const e = h >> 1
  const s = edges.segment[e]!
  const put = sourceAt(pack, pack.source[s]!)
  const original = typeof put === 'object' ? put : undefined
  if (original !== undefined && (h & 1) === 0 && original.from === from && original.to === to) return original
  const tag = typeof put === 'object' ? put.tag : put
  if (pack.turn[s] === 0) return line(from, to, tag)
  const centre = original?.kind === 'arc' ? original.centre : { x: pack.centreX[s]!, y: pack.centreY[s]! }
  const radius = original?.kind === 'arc' ? original.radius : distance(centre, from)
  const dx = to.x - from.x
  const dy = to.y - from.y
  if (straight && isFlat(dx * dx + dy * dy, radius)) return line(from, to, tag)
  const turn = pack.turn[s]! > 0 === ((h & 1) === 0) ? 1 : -1
  return arcOf(from, to, centre, radius, turn, tag)
}
