import { coincident } from '../../number/tolerance.ts'
import { contourBounds } from '../measure/bounds.ts'
import { pointInContour } from '../measure/inside.ts'
import type { Bounds, Contour, Region } from '../shape/contour.ts'
import type { MeasuredContour } from './ring-contour.ts'

/**
 * Regions from contours that do not cross and run with the inside on their left: one that runs
 * counter-clockwise is an outer contour, one that runs clockwise a hole in the smallest outer contour around
 * it. Contours that are nowhere wider than `coincident` are no shapes and are left out.
 */
export function nestContours(contours: readonly MeasuredContour[]): Region[] {
  const shapes = contours.filter(c => Math.abs(c.area) > coincident * c.length)
  const outers = shapes.filter(c => c.area > 0)
  const holes = shapes.filter(c => c.area < 0)
  if (outers.length === 1) return [{ outer: outers[0]!.contour, holes: holes.map(h => h.contour) }]
  const owned = ownedHoles(outers, holes)
  return outers.map((o, i) => ({ outer: o.contour, holes: owned[i]! }))
}

type Placed = MeasuredContour & { readonly index: number; readonly bounds: Bounds }

/** The holes of each outer contour. A sweep from the left keeps to the outer contours that are over a hole's left end. */
function ownedHoles(outers: readonly MeasuredContour[], holes: readonly MeasuredContour[]): Contour[][] {
  const owned = outers.map((): Contour[] => [])
  if (holes.length === 0) return owned
  const waiting = fromTheLeft(outers)
  let open: Placed[] = []
  let taken = 0
  for (const hole of fromTheLeft(holes)) {
    const { bounds } = hole
    for (; taken < waiting.length && waiting[taken]!.bounds.left <= bounds.left; taken++) {
      open.push(waiting[taken]!)
    }
    open = open.filter(o => o.bounds.right >= bounds.left)
    const around = open
      .filter(o => o.area > -hole.area && holds(o.bounds, bounds))
      .sort((a, b) => a.area - b.area || a.index - b.index)
    // whatever is left last needs no test: the hole has to lie somewhere
    const owner = around.find((o, k) => k + 1 === around.length || encloses(o.contour, hole.contour))
    if (owner !== undefined) owned[owner.index]!.push(hole.contour)
  }
  return owned
}

function fromTheLeft(contours: readonly MeasuredContour[]): Placed[] {
  return contours
    .map((c, index) => ({ ...c, index, bounds: contourBounds(c.contour) }))
    .sort((a, b) => a.bounds.left - b.bounds.left || a.index - b.index)
}

function holds(outer: Bounds, inner: Bounds): boolean {
  return (
    inner.left >= outer.left &&
    inner.right <= outer.right &&
    inner.bottom >= outer.bottom &&
    inner.top <= outer.top
  )
}

/** Two contours that do not cross: the first corner that is not on the other one tells. */
function encloses(outer: Contour, inner: Contour): boolean {
  for (const s of inner.segments) {
    const side = pointInContour(outer, s.from)
    if (side !== 'on') return side === 'inside'
  }
  return false
}
