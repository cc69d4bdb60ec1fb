import { contourBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds, Contour } from '../../geometry/shape/contour.ts'
import { apply, shift } from '../../geometry/shape/matrix.ts'
import type { Line } from '../../geometry/shape/segment.ts'
import { transformContour } from '../../geometry/shape/transform.ts'
import { printable } from '../../number/tolerance.ts'
import type { SizeDiffers } from '../shape-facts.ts'
import type { Size } from '../size.ts'
import type { Context } from './context.ts'
import { isKnown, missingSizes } from './cut-builder.ts'
import { edgeFrame } from './face-frame.ts'
import { buildOutline, type MadeOutline } from './outline/outline.ts'
import { resolvePositive } from './resolve-size.ts'
import { withPartSizes } from './scope.ts'
import type { NamedEdge, ShapeBuilder } from './shape-builder.ts'

/**
 * A part of any outline. Its sides are those of the rectangle round it, or of the size that the plan gives beside it;
 * where the two differ, that is carried along.
 */
export const buildOutlineShape: ShapeBuilder<'outline'> = (context, plan) => {
  const length = plan.size && resolvePositive(context, plan.size.length, 'the length')
  const width = plan.size && resolvePositive(context, plan.size.width, 'the width')
  if (plan.size && (length === undefined || width === undefined)) return undefined
  if (length === 'unknown' || width === 'unknown') {
    return { missing: missingSizes({ length, width }), faults: [] }
  }
  const stated = isKnown(length) && isKnown(width) ? { length, width } : undefined
  const noted = scaledNoted(stated ? withPartSizes(context, stated) : context)
  const box = stated && { length: stated.length.mm, width: stated.width.mm }
  const made = buildOutline(noted.context, plan.outline, box)
  if (made === undefined || 'faults' in made) return made

  const bounds = contourBounds(made.contour)
  const move = stated ? shift(0, 0) : shift(-bounds.left, -bounds.bottom)
  const outer = transformContour(made.contour, move)
  const basis = noted.wasScaled() ? 'scaled' : 'derived'
  const own = (mm: number): Size => ({ mm, basis, written: '', source: plan.outline.source })
  return {
    kind: 'outline',
    outline: { outer, holes: [] },
    length: stated?.length ?? own(bounds.right - bounds.left),
    width: stated?.width ?? own(bounds.top - bounds.bottom),
    edges: namedEdges(made, outer, move),
    corners: made.corners,
    unknownCorners: made.unknownCorners,
    missing: made.missing,
    sizeDiffers: stated ? differences(stated, bounds) : [],
  }
}

/** The context, and whether anything that was resolved in it had been scaled off the drawing. */
function scaledNoted(context: Context): { readonly context: Context; readonly wasScaled: () => boolean } {
  let scaled = false
  const noteScaled: Context['noteScaled'] = size => {
    scaled = true
    context.noteScaled(size)
  }
  return { context: { ...context, noteScaled }, wasScaled: () => scaled }
}

function differences(
  { length, width }: { readonly length: Size; readonly width: Size },
  bounds: Bounds,
): readonly SizeDiffers[] {
  const drawn = { length: bounds.right - bounds.left, width: bounds.top - bounds.bottom }
  const off = {
    length: Math.max(Math.abs(bounds.left), Math.abs(bounds.right - length.mm)),
    width: Math.max(Math.abs(bounds.bottom), Math.abs(bounds.top - width.mm)),
  }
  const stated = { length, width }
  return (['length', 'width'] as const).flatMap(direction =>
    off[direction] > printable ? [{ direction, stated: stated[direction], drawn: drawn[direction] }] : [],
  )
}

/** The straight edges with names, each from one theoretical corner to the other. */
function namedEdges(
  { sharp, backwards }: MadeOutline,
  outer: Contour,
  move: ReturnType<typeof shift>,
): readonly NamedEdge[] {
  return sharp.flatMap(edge => {
    if (edge.kind !== 'line' || edge.tag === undefined) return []
    const name = edge.tag
    const left = outer.segments.find((s): s is Line => s.kind === 'line' && s.tag === name)
    if (left === undefined) return []
    const [from, to] = [apply(move, edge.from), apply(move, edge.to)]
    return [
      {
        frame: thickness => edgeFrame(name, from, to, thickness, backwards),
        from: Math.hypot(left.from.x - from.x, left.from.y - from.y),
        to: Math.hypot(left.to.x - from.x, left.to.y - from.y),
      },
    ]
  })
}
