import type { Point } from '../../geometry/shape/point.ts'
import type { GridPlan, HoleCirclePlan, HolePlan, RowPlan } from '../../plan/plan.ts'
import { depthUnder } from '../box-faces.ts'
import type { Bore, Feature, Missing, RowPlace } from '../feature.ts'
import { type Bored, resolveBore } from './bore.ts'
import { described, facesOf, unplaced } from './cut-builder.ts'
import type { FaceFrame } from './face-frame.ts'
import { leanOn } from './lean.ts'
import { mouthFits } from './mouth.ts'
import { type PlacedAt, place } from './position.ts'
import type { Site } from './site.ts'

type HolesPlan = HolePlan | RowPlan | GridPlan | HoleCirclePlan

/** Where holes are in respect to the first place, what that lacks, or nothing where a fault has been reported. */
export type Pattern =
  | {
      readonly centres: readonly (readonly [
        centre: Point,
        place: Omit<RowPlace, 'row' | 'number' | 'count'>,
      ])[]
    }
  | { readonly missing: readonly Missing[] }
  | undefined

/**
 * The bores of a cut that makes several alike. `pattern` says where they are on a face, about the place given. All
 * of a cut is looked at, whatever of it is at fault, so that every fault comes out in one run.
 */
export function buildHoles(
  site: Site,
  cut: HolesPlan,
  pattern: (frame: FaceFrame, at: Point) => Pattern,
  missingElse: readonly Missing[] = [],
): readonly Feature[] {
  const bored = resolveBore(site.context, cut)
  const faces = facesOf(site, cut)
  if (faces === undefined) return []
  return faces.flatMap(({ frame, id }) => {
    const placed = place(site, frame, cut.at, { along: 0, across: 0 })
    if (placed === undefined) return []
    const holes = 'at' in placed ? pattern(frame, placed.at) : placed
    if (holes === undefined || bored === undefined) return []
    const missing = [...missingOf(bored), ...missingElse, ...missingOf(holes)]
    if (missing.length > 0 || 'missing' in bored || 'missing' in holes) {
      return [unplaced(cut, id, frame.id, missing)]
    }
    const lean = leanOn(frame, bored.leans)
    const boreAt = (centre: Point): Bore => ({
      kind: 'bore',
      centre,
      ...bored.bore,
      ...(lean ? { lean } : {}),
    })
    const under = depthUnder(frame.id, site.extent)
    if (cut.mouth && !mouthFits(site.context, boreAt({ x: 0, y: 0 }), under, cut.mouth.source)) return []
    return holes.centres.map(([centre, where], i): Feature => {
      const single = cut.kind === 'hole'
      return {
        id: single ? id : `${id}.${i + 1}`,
        face: frame.id,
        shape: boreAt(centre),
        ...(single ? {} : { row: { row: id, ...where, number: i + 1, count: holes.centres.length } }),
        ...described(cut),
      }
    })
  })
}

function missingOf(what: Bored | Exclude<PlacedAt, undefined> | NonNullable<Pattern>): readonly Missing[] {
  return 'missing' in what ? what.missing : []
}
