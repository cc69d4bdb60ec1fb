import type { CheckFacts } from '../finding/check-facts.ts'
import type { Finding } from '../finding/finding.ts'
import type { Model } from '../model/part.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { cutsMeetInside } from './inside/cuts-meet-inside.ts'
import { exitOnFeature } from './inside/exit-on-feature.ts'
import { holeComesOut } from './inside/hole-comes-out.ts'
import { holesMeetInside } from './inside/holes-meet-inside.ts'
import { outOfReach } from './inside/out-of-reach.ts'
import { wallInside } from './inside/wall-inside.ts'
import { joinedTwice } from './joint/joined-twice.ts'
import { pinHoleCount } from './joint/pin-hole-count.ts'
import { pinHoleDepth } from './joint/pin-hole-depth.ts'
import { pinHoleWidth } from './joint/pin-hole-width.ts'
import { pinHolesApart } from './joint/pin-holes-apart.ts'
import { tongueFit } from './joint/tongue-fit.ts'
import { diameterMissing } from './missing/diameter-missing.ts'
import { positionMissing } from './missing/position-missing.ts'
import { radiusMissing } from './missing/radius-missing.ts'
import { scaledSize } from './missing/scaled-size.ts'
import { sizeMissing } from './missing/size-missing.ts'
import { labelTwice } from './name/label-twice.ts'
import { nameUnused } from './name/name-unused.ts'
import { outlineCrossing } from './outline/outline-crossing.ts'
import { outlineDoubled } from './outline/outline-doubled.ts'
import { outlineNoLength } from './outline/outline-no-length.ts'
import { outlineOpen } from './outline/outline-open.ts'
import { sizeDiffers } from './outline/size-differs.ts'
import { taperDisagrees } from './outline/taper-disagrees.ts'
import { rowOffPart } from './row/row-off-part.ts'
import { rowUneven } from './row/row-uneven.ts'
import type { Explanation, Rule } from './rule.ts'
import { bitMissing } from './shop/bit-missing.ts'
import { largerThanStock } from './shop/larger-than-stock.ts'
import { measuredDiffers } from './shop/measured-differs.ts'
import { smallPiece } from './shop/small-piece.ts'
import { templateMissing } from './shop/template-missing.ts'
import { subjectOf } from './subject/subject.ts'
import { entryHole } from './wood/entry-hole.ts'
import { featuresMeet } from './wood/features-meet.ts'
import { holeNearEdge } from './wood/hole-near-edge.ts'
import { neckTooNarrow } from './wood/neck-too-narrow.ts'
import { outsidePart } from './wood/outside-part.ts'
import { tooDeep } from './wood/too-deep.ts'
import { wallTooThin } from './wood/wall-too-thin.ts'

/** One line a rule; a rule whose facts are declared and whose line is missing fails the type check. */
const rules: { readonly [R in keyof CheckFacts]: Rule<R> } = {
  'position-missing': positionMissing,
  'radius-missing': radiusMissing,
  'diameter-missing': diameterMissing,
  'size-missing': sizeMissing,
  'scaled-size': scaledSize,
  'outline-open': outlineOpen,
  'outline-crossing': outlineCrossing,
  'outline-doubled': outlineDoubled,
  'outline-no-length': outlineNoLength,
  'size-differs': sizeDiffers,
  'taper-disagrees': taperDisagrees,
  'outside-part': outsidePart,
  'row-off-part': rowOffPart,
  'row-uneven': rowUneven,
  'features-meet': featuresMeet,
  'hole-near-edge': holeNearEdge,
  'wall-too-thin': wallTooThin,
  'neck-too-narrow': neckTooNarrow,
  'too-deep': tooDeep,
  'entry-hole': entryHole,
  'holes-meet-inside': holesMeetInside,
  'cuts-meet-inside': cutsMeetInside,
  'wall-inside': wallInside,
  'hole-comes-out': holeComesOut,
  'exit-on-feature': exitOnFeature,
  'out-of-reach': outOfReach,
  'bit-missing': bitMissing,
  'template-missing': templateMissing,
  'larger-than-stock': largerThanStock,
  'measured-differs': measuredDiffers,
  'small-piece': smallPiece,
  'pin-hole-width': pinHoleWidth,
  'pin-hole-depth': pinHoleDepth,
  'pin-holes-apart': pinHolesApart,
  'pin-hole-count': pinHoleCount,
  'tongue-fit': tongueFit,
  'joined-twice': joinedTwice,
  'name-unused': nameUnused,
  'label-twice': labelTwice,
}

/** All that the rules find, in the order of the plan's text, then of the rules. */
export function check(model: Model, workshop: Workshop): readonly Finding[] {
  const subject = subjectOf(model, workshop)
  return Object.values(rules)
    .flatMap((rule): readonly Finding[] => rule.find(subject))
    .map((finding, order) => ({ finding, order, at: finding.places[0]?.source?.from ?? 0 }))
    .sort((a, b) => a.at - b.at || a.order - b.order)
    .map(({ finding }) => finding)
}

/** The names of all rules, in the order of the report. */
export const checkRules = Object.keys(rules) as readonly (keyof CheckFacts)[]

/** What a rule is for, what its limit is and where that comes from; nothing for a name that is no rule of the check. */
export function explain(rule: string): Explanation | undefined {
  return Object.hasOwn(rules, rule) ? rules[rule as keyof CheckFacts].explanation : undefined
}
