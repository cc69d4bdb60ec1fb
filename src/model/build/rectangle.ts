import type { Corner } from '../../geometry/shape/rectangle.ts'
import { corneredRectangle, resolveCorners } from './corners.ts'
import { isKnown, missingSizes } from './cut-builder.ts'
import { resolvePositive } from './resolve-size.ts'
import { withPartSizes } from './scope.ts'
import type { ShapeBuilder } from './shape-builder.ts'

/** A rectangle, its corners rounded, chamfered or square, its ends round where the plan says. */
export const buildRectangle: ShapeBuilder<'rectangle'> = (context, { size, corners: plan, roundEnds }) => {
  const length = resolvePositive(context, size.length, 'the length')
  const width = resolvePositive(context, size.width, 'the width')
  if (length === undefined || width === undefined) return undefined
  const corners = resolveCorners(withPartSizes(context, { length, width }), plan)
  if (corners === undefined) return undefined
  if (!isKnown(length) || !isKnown(width)) return { missing: missingSizes({ length, width }), faults: [] }

  const half: Corner = { radius: width.mm / 2 }
  const round = Object.fromEntries(
    roundEnds.flatMap(({ value: end }) => [
      [`top-${end}`, half],
      [`bottom-${end}`, half],
    ]),
  )
  const bounds = { left: 0, bottom: 0, right: length.mm, top: width.mm }
  const made = { ...corners.corners, ...round }
  const ends = roundEnds.map(({ source }) => source)
  const outline = corneredRectangle(context, bounds, made, plan, ends)
  return (
    outline && {
      kind: 'rectangle',
      outline,
      length,
      width,
      edges: [],
      corners: corners.made,
      unknownCorners: corners.unknown,
      missing: corners.missing,
      sizeDiffers: [],
    }
  )
}
