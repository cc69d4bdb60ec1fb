import { pointInRegion } from '../../geometry/measure/inside.ts'
import { nearestOnRegion } from '../../geometry/measure/nearest.ts'
import { contourSeparation } from '../../geometry/measure/separation.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { count, mm, placeOfFeature, wordFor } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { type HoleCut, isHole, shareDepth } from '../subject/cut.ts'
import { woodToEased } from '../subject/eased.ts'
import { edgeName } from '../subject/edge-name.ts'
import type { Plane } from '../subject/plane.ts'
import { worstOfEach } from '../worst-of-each.ts'
import { clearBeside, clearInWords, severityOfThin } from './limits.ts'

/** A hole whose rim leaves too little wood to the edge of the part, a notch's edge included, and a bevelled or eased one at the hole's depth. */
export const holeNearEdge: Rule<'hole-near-edge'> = {
  find: ({ parts, workshop }) =>
    parts.flatMap(({ part, planes }) => {
      const near = planes.flatMap(plane =>
        plane.cuts.filter(isHole).flatMap(cut => nearEdge(plane, cut, workshop)),
      )
      const worst = worstOfEach(
        near,
        ({ cut }) => `${cut.feature.cut} ${cut.feature.face}`,
        ({ clear, limit }) => 1 - clear / limit,
      )
      return worst.map(({ worst: { cut, clear, limit, edge }, count: alike }) => ({
        rule: 'hole-near-edge',
        severity: severityOfThin(clear, limit, workshop.clear),
        places: [placeOfFeature(part, cut.feature)],
        measured: mm(clear),
        limit: mm(limit),
        facts: { what: 'hole', edge, count: count(alike) },
      }))
    }),
  explanation: {
    purpose:
      'A hole too near to an edge breaks out when the bit comes through, or later when the pin is driven in.',
    limit: clearInWords,
    origin: commonPractice,
  },
}

type Near = { readonly cut: HoleCut; readonly clear: number; readonly limit: number; readonly edge: string }

function nearEdge(plane: Plane, cut: HoleCut, workshop: Workshop): readonly Near[] {
  const { face, wood, blank } = plane
  const around = wood.find(region => pointInRegion(region, cut.centre) === 'inside')
  const nearest = around && rimToEdge(around, cut)
  if (around === undefined || nearest === undefined) return []
  const { clear } = nearest
  const limit = clearBeside(cut, workshop)
  const slope = nearestSlope(plane, cut)
  if (slope !== undefined && slope.clear < clear) {
    // what runs into a slope has a rule of its own
    const near = slope.clear > coincident && slope.clear < limit - coincident
    return near ? [{ cut, clear: slope.clear, limit, edge: wordFor(slope.edge.feature) }] : []
  }
  // what breaks out of the part or runs into a notch has a rule of its own
  if (clear < -coincident || clear >= limit - coincident) return []
  if (clear <= coincident && (rimToEdge(blank, cut)?.clear ?? 0) > coincident) return []
  // of an ellipse that reaches the edge it is not known how far it goes past
  if (clear <= coincident && cut.disc === undefined && plane.out.has(cut)) return []
  const contour = [around.outer, ...around.holes][nearest.contour]!
  return [{ cut, clear, limit, edge: edgeName(face, contour.segments[nearest.segment]!.tag) }]
}

/** The bevel or eased edge that comes nearest to the hole at its depth. */
function nearestSlope({ eased }: Plane, cut: HoleCut) {
  const slopes = eased
    .filter(edge => shareDepth(cut, edge))
    .map(edge => ({ edge, clear: woodToEased(cut, edge) }))
  return slopes.toSorted((a, b) => a.clear - b.clear)[0]
}

/** The wood from the rim of a hole to the nearest edge of a region, and which edge that is; less than none only of a disc. */
function rimToEdge(
  region: Region,
  { disc, region: rim }: HoleCut,
): { readonly clear: number; readonly contour: number; readonly segment: number } | undefined {
  if (disc) {
    const nearest = nearestOnRegion(region, disc.centre)
    return nearest && { ...nearest, clear: nearest.distance - disc.radius }
  }
  const contours = [region.outer, ...region.holes].map((contour, i) => {
    const { distance, second } = contourSeparation(rim.outer, contour)
    return { clear: distance, contour: i, segment: second.segment }
  })
  return contours.reduce((best, found) => (found.clear < best.clear ? found : best))
}
