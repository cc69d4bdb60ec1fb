import type { FindingOf } from '../../finding/finding.ts'
import { clipPaths } from '../../geometry/cut/clip-path.ts'
import { pointAt } from '../../geometry/measure/along.ts'
import { discProtrusion, type Protrusion } from '../../geometry/measure/protrusion.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { isPlaced, type Placed } from '../../model/feature.ts'
import { faceOf, type Part } from '../../model/part.ts'
import { shapeBounds } from '../../model/shape-bounds.ts'
import { isOfRow, mm, placeOfFeature, wordFor } from '../place.ts'
import type { Rule } from '../rule.ts'
import { edgeName } from '../subject/edge-name.ts'

/** A hole, slot, groove, cut-out, notch or engraving that sticks out of the part: by how much, and past which edge. */
export const outsidePart: Rule<'outside-part'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part, planes }) => [
      ...engravingsOutside(part),
      ...planes.flatMap(plane =>
        plane.cuts.flatMap((cut): FindingOf<'outside-part'>[] => {
          // holes of a row are the row's own rule's business
          const out = isOfRow(cut.feature) ? undefined : plane.out.get(cut)
          if (out === undefined) return []
          return [
            {
              rule: 'outside-part',
              severity: 'error',
              places: [placeOfFeature(part, cut.feature)],
              measured: mm(out.by),
              limit: mm(0),
              facts: { what: wordFor(cut.feature), beyond: edgeName(plane.face, out.beyond) },
            },
          ]
        }),
      ),
    ]),
  explanation: {
    purpose:
      'A cut that goes past the edge of its part is nearly always a slip: a distance from the wrong side, 1 5/16 read for 15/16. The bit then breaks out of the edge.',
    limit: () => 'no part of a cut lies outside the outline; a notch may take a rounded corner with it',
    origin: 'true distances to the outline, its arcs included',
  },
}

/** An engraving whose lines leave its face; of a text, the height at the place where it begins, ends or is centred. */
function engravingsOutside(part: Part): readonly FindingOf<'outside-part'>[] {
  return part.drawn.features.filter(isPlaced).flatMap((feature): FindingOf<'outside-part'>[] => {
    const face = faceOf(part.drawn, feature.face)
    const out = worstOf(pointsOf(feature.shape, face.region).map(p => discProtrusion(p, 0, face.region)))
    if (out === undefined) return []
    return [
      {
        rule: 'outside-part',
        severity: 'error',
        places: [placeOfFeature(part, feature)],
        measured: mm(out.by),
        limit: mm(0),
        facts: { what: wordFor(feature), beyond: edgeName(face, out.beyond) },
      },
    ]
  })
}

/** Points of an engraving, such that one of them lies outside the face where any of it does. */
function pointsOf(shape: Placed['shape'], face: Region): readonly Point[] {
  switch (shape.kind) {
    case 'engraved-lines':
      return clipPaths(shape.paths, [face]).flatMap(({ outside }) =>
        outside.flatMap(({ segments }) => segments.flatMap(s => [s.from, pointAt(s, 1 / 2), s.to])),
      )
    case 'engraved-text': {
      const { left, bottom, top } = shapeBounds(shape)
      return [
        { x: left, y: bottom },
        { x: left, y: top },
      ]
    }
    default:
      return []
  }
}

function worstOf(found: readonly (Protrusion | undefined)[]): Protrusion | undefined {
  return found.reduce((worst, one) => (one && (!worst || one.by > worst.by) ? one : worst), undefined)
}
