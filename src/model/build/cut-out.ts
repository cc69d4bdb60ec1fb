import { contourBounds } from '../../geometry/measure/bounds.ts'
import { circle } from '../../geometry/shape/circle.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { mirrorAcross, shift } from '../../geometry/shape/matrix.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import type { CutOutPlan } from '../../plan/plan.ts'
import type { Feature, Missing } from '../feature.ts'
import { corneredRectangle, resolveCorners } from './corners.ts'
import { type CutBuilder, described, facesOf, isKnown, missingSizes, unplaced } from './cut-builder.ts'
import { entryHole } from './entry-hole.ts'
import type { FaceFrame } from './face-frame.ts'
import { buildOutline } from './outline/outline.ts'
import { place } from './position.ts'
import { resolvePositive } from './resolve-size.ts'
import type { Site } from './site.ts'

/** A piece sawn out of the inside. A distance leads to the near side of the rectangle round it. */
export const buildCutOut: CutBuilder<CutOutPlan> = (site, cut) => {
  const shape = wasteShape(site, cut)
  const faces = facesOf(site, cut)
  if (faces === undefined) return []
  return faces.flatMap(({ frame, id }): readonly Feature[] => {
    const lacking = (missing: readonly Missing[]) => [unplaced(cut, id, frame.id, missing)]
    const region = shape && 'outer' in shape ? placedWaste(site, frame, cut, shape) : shape
    if (region === undefined) return []
    if ('missing' in region) return lacking(region.missing)
    const entry = entryHole(site, frame, cut.entry, region)
    if (entry === undefined) return []
    if (entry !== 'none' && 'missing' in entry) return lacking(entry.missing)
    const enters = entry === 'none' ? {} : entry
    return [{ id, face: frame.id, shape: { kind: 'cut-out', region, ...enters }, ...described(cut) }]
  })
}

type Waste = Region | { readonly missing: readonly Missing[] } | undefined

/** What is sawn out, wherever its own millimetres put it. */
function wasteShape(site: Site, { shape }: CutOutPlan): Waste {
  const { context, extent } = site
  switch (shape.kind) {
    case 'disc': {
      const diameter = resolvePositive(context, shape.diameter, 'the diameter')
      if (!isKnown(diameter)) return diameter && { missing: missingSizes({ diameter }) }
      return { outer: circle({ x: 0, y: 0 }, diameter.mm / 2), holes: [] }
    }
    case 'rectangle': {
      const along = resolvePositive(context, shape.along, 'the size along')
      const across = resolvePositive(context, shape.across, 'the size across')
      const corners = resolveCorners(context, shape.corners)
      if (along === undefined || across === undefined || corners === undefined) return undefined
      const missing = [...missingSizes({ 'size along': along, 'size across': across }), ...corners.missing]
      if (!isKnown(along) || !isKnown(across) || missing.length > 0) return { missing }
      const bounds = { left: 0, right: along.mm, bottom: 0, top: across.mm }
      return corneredRectangle(context, bounds, corners.corners, shape.corners)
    }
    case 'outline': {
      const made = buildOutline(context, shape.outline, shape.placed ? extent : undefined)
      if (made === undefined) return undefined
      if ('contour' in made) {
        return made.missing.length > 0 ? { missing: made.missing } : { outer: made.contour, holes: [] }
      }
      if (made.faults.length === 0) return { missing: made.missing }
      return { missing: [...made.missing, { kind: 'outline', faults: made.faults }] }
    }
  }
}

/** On its face: where its own points put it, which count on the front, or where `at` does. */
function placedWaste(site: Site, frame: FaceFrame, { shape, at }: CutOutPlan, waste: Region): Waste {
  if (shape.kind === 'outline' && shape.placed) {
    return frame.id === 'back' ? transformRegion(waste, mirrorAcross(site.extent.length / 2)) : waste
  }
  const { left, right, bottom, top } = contourBounds(waste.outer)
  const placed = place(site, frame, at, { along: right - left, across: top - bottom })
  if (placed === undefined || 'missing' in placed) return placed
  return transformRegion(waste, shift(placed.at.x - (left + right) / 2, placed.at.y - (bottom + top) / 2))
}
