import { pointAt } from '../geometry/measure/along.ts'
import { signedArea } from '../geometry/measure/area.ts'
import { contourBounds } from '../geometry/measure/bounds.ts'
import { pointInContour } from '../geometry/measure/inside.ts'
import { offsetRegion } from '../geometry/offset/index.ts'
import type { Bounds, Contour } from '../geometry/shape/contour.ts'
import { failure, type Outcome, success } from '../geometry/shape/outcome.ts'
import type { Drawing } from './drawing.ts'
import { pathMark } from './make-mark.ts'
import type { Mark } from './mark.ts'
import { shapesOf } from './shapes.ts'

export type Compensated = {
  readonly drawing: Drawing
  /**
   * Subjects of shapes that the kerf does not go into as they are: a hole that vanishes or falls into several, an
   * outline whose sides run together.
   */
  readonly tooNarrow: readonly string[]
}

/**
 * A drawing whose shapes are moved into the waste by half the width of what parts the wood, so that a machine whose
 * middle follows the lines leaves true edges: outlines outward, holes inward, by the kernel's offset with arcs kept.
 * A shape is a hole where it is bored or any of it lies inside a larger one; wood has no islands in its holes. What is there to be
 * read stays as it is.
 *
 * @param kerf in millimetres
 * @returns the drawing, or a fault: `kerf` when that is negative, or why a contour could not be offset
 */
export function compensateKerf(drawing: Drawing, kerf: number): Outcome<Compensated> {
  if (!(kerf >= 0 && Number.isFinite(kerf))) {
    const asked = { operation: 'compensateKerf', input: { drawing: drawing.id, kerf } }
    return failure({ ...asked, reason: 'kerf', facts: { kerf } })
  }
  const isHole = holesAmong(drawing.marks.flatMap(shapesOf))
  const tooNarrow = new Set<string>()
  const marks: Mark[] = []
  for (const mark of drawing.marks) {
    const shapes = shapesOf(mark)
    if (mark.kind !== 'path' || shapes.length === 0) {
      marks.push(mark)
      continue
    }
    const bored = mark.role === 'drill'
    const moved = new Map<Contour, readonly Contour[]>()
    for (const shape of shapes) {
      const outcome = offsetRegion({ outer: shape, holes: [] }, (bored || isHole(shape) ? -kerf : kerf) / 2)
      if (!outcome.ok) return outcome
      const contours = outcome.value.flatMap(({ outer, holes }) => [outer, ...holes])
      if (contours.length !== 1) tooNarrow.add(mark.subject ?? drawing.id)
      moved.set(shape, contours)
    }
    const contours = mark.contours.flatMap(c => moved.get(c) ?? [c])
    marks.push(pathMark(mark, mark.role, contours))
  }
  return success({
    drawing: { ...drawing, marks, bounds: grown(drawing.bounds, kerf / 2) },
    tooNarrow: [...tooNarrow],
  })
}

function holesAmong(shapes: readonly Contour[]): (shape: Contour) => boolean {
  const measured = shapes
    .map(shape => ({ shape, box: contourBounds(shape), area: Math.abs(signedArea(shape)) }))
    .sort((a, b) => b.area - a.area)
  const holes = new Set<Contour>()
  measured.forEach(({ shape, box, area }, i) => {
    const larger = measured.slice(0, i).filter(one => one.area > area && overlap(one.box, box))
    if (larger.some(one => liesIn(shape, one.shape))) holes.add(shape)
  })
  return shape => holes.has(shape)
}

/** Shares of an edge at which it is asked on which side of another contour it lies. */
const shares = [0, 0.5, 0.21, 0.83]

function liesIn(inner: Contour, outer: Contour): boolean {
  return inner.segments.some(s => shares.some(share => pointInContour(outer, pointAt(s, share)) === 'inside'))
}

function overlap(a: Bounds, b: Bounds): boolean {
  return a.left <= b.right && a.right >= b.left && a.bottom <= b.top && a.top >= b.bottom
}

function grown({ left, bottom, right, top }: Bounds, by: number): Bounds {
  return { left: left - by, bottom: bottom - by, right: right + by, top: top + by }
}
