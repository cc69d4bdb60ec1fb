import { pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import { mirrorAcross } from '../../geometry/shape/matrix.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { isPlaced, type Placed } from '../../model/feature.ts'
import type { Solid } from '../../model/part.ts'
import { onPlane, toPart } from '../../model/pose.ts'
import { edgeLines, workedLines } from '../../model/strip.ts'
import { boreMarks } from './bore-marks.ts'
import { holeMarks } from './hole-marks.ts'

/**
 * What shows on the front: everything that is cut from there, bores that come straight through from the back, where
 * they come out, and bevels, which are sawn from the front whichever face they make shorter. The rest is on other faces
 * and listed apart.
 */
export function seenFromFront(solid: Solid): {
  readonly seen: readonly Placed[]
  readonly elsewhere: readonly Placed[]
} {
  const seen: Placed[] = []
  const elsewhere: Placed[] = []
  for (const feature of solid.features.filter(isPlaced)) {
    const { face, shape } = feature
    if (face === 'front') seen.push(feature)
    else if (face === 'back' && shape.kind === 'bore' && shape.depth === 'through' && !shape.lean) {
      const centre = onPlane(solid.faces.front.pose, toPart(solid.faces.back.pose, shape.centre))
      seen.push({ ...feature, shape: { ...shape, centre } })
    } else if (face === 'back' && shape.kind === 'bevel') {
      const fromBack = mirrorAcross(solid.faces.back.pose.origin.x / 2)
      seen.push({ ...feature, shape: { ...shape, region: transformRegion(shape.region, fromBack) } })
    } else elsewhere.push(feature)
  }
  return { seen, elsewhere }
}

/** The lines by which a cut is made; what is engraved has marks of its own. A notch has none of its own: it is part of the outline. */
export function cutMarks(feature: Placed, subject: string): readonly Mark[] {
  const { shape } = feature
  switch (shape.kind) {
    case 'bore':
      // a row is bored against a fence, where a prick would pull the bit off the line
      return boreMarks(shape, subject, feature.row === undefined, feature.face === 'back')
    case 'pocket':
      return [pathMark({ layer: 'cut', subject }, 'cut', [shape.region.outer])]
    case 'cut-out': {
      const { region, entry } = shape
      const line = pathMark({ layer: 'cut', subject }, 'cut', [region.outer])
      if (entry === undefined) return [line]
      return [line, ...holeMarks(entry.centre, entry.diameter / 2, `${subject}.entry`, true)]
    }
    case 'edge-cut':
      return []
    case 'groove':
    case 'rebate':
      // a closed shape is what a machine cuts right through, and these go only so deep
      return [pathMark({ layer: 'cut', subject }, 'cut', workedLines(shape.region).map(opened))]
    case 'bevel': {
      // the line on the front is part of the outline, the one on the back lies outside it or inside
      const onBack = feature.face === 'front' ? edgeLines(shape.region) : workedLines(shape.region)
      return [pathMark({ layer: 'cut', subject }, 'hidden', onBack)]
    }
    case 'chamfer':
    case 'round-over':
      return [pathMark({ layer: 'cut', subject }, 'thin', workedLines(shape.region))]
    case 'engraved-lines':
    case 'engraved-text':
      return []
  }
}

function opened({ segments }: Contour): Contour {
  return { segments, closed: false }
}
