import { pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { isPlaced, type Placed } from '../../model/feature.ts'
import type { Solid } from '../../model/part.ts'
import { onPlane, toPart } from '../../model/pose.ts'
import { boreMarks } from './bore-marks.ts'
import { holeMarks } from './hole-marks.ts'

/**
 * What shows on the front: everything that is cut from there, and bores that come through from the back, where they
 * come out. The rest is on other faces and listed apart.
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
    else if (face === 'back' && shape.kind === 'bore' && shape.depth === 'through') {
      const centre = onPlane(solid.faces.front.pose, toPart(solid.faces.back.pose, shape.centre))
      seen.push({ ...feature, shape: { ...shape, centre } })
    } else elsewhere.push(feature)
  }
  return { seen, elsewhere }
}

/** The lines by which a cut is made. A notch has none of its own: it is part of the outline. */
export function cutMarks(feature: Placed, subject: string): readonly Mark[] {
  const { shape } = feature
  switch (shape.kind) {
    case 'bore':
      // a row is bored against a fence, where a prick would pull the bit off the line
      return boreMarks(shape, subject, feature.row === undefined)
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
  }
}
