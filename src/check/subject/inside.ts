import { isBore, isPlaced, type Placed } from '../../model/feature.ts'
import { type Bored, boredOf } from '../../model/inside/bored.ts'
import { type Hollow, hollowsOf } from '../../model/inside/hollow.ts'
import { type Wood, woodOf } from '../../model/inside/walls.ts'
import type { Part } from '../../model/part.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { clearBesideHole } from '../wood/limits.ts'
import { type Encounter, encountersOf, pairName } from './encounters.ts'
import { type HollowsNear, hollowsNear } from './hollows-near.ts'
import { type Outward, outwardOf } from './outward.ts'
import type { Plane } from './plane.ts'
import { seenOn } from './seen.ts'

/** A part as a solid: its wood, what is bored and cut into it, and what of that comes near to one another. */
export type Inside = {
  readonly wood: Wood
  readonly bores: readonly Bored[]
  readonly hollows: readonly Hollow[]
  /** Through holes whose axis meets no wood. */
  readonly missed: readonly Placed[]
  readonly encounters: readonly Encounter[]
  readonly hollowsNear: readonly HollowsNear[]
  /** The pairs of cuts that the encounters are about, by {@link pairName}. */
  readonly pairs: ReadonlySet<string>
  readonly outward: readonly Outward[]
}

export function insideOf({ drawn }: Part, planes: readonly Plane[], workshop: Workshop): Inside {
  const seen = seenOn(planes)
  const features = drawn.features.filter(isPlaced)
  const wood = woodOf(drawn)
  const made = features
    .filter(isBore)
    .map(feature => ({ feature, bored: boredOf(drawn, wood, feature, workshop.bits) }))
  const bores = made.flatMap(({ bored }) => bored ?? [])
  const missed = made.filter(({ bored }) => bored === undefined).map(({ feature }) => feature)
  const hollows = features.flatMap(feature => hollowsOf(drawn, feature))
  const reach = Math.max(
    workshop.wall,
    workshop.clear.underPoint,
    ...bores.map(({ radius }) => clearBesideHole(2 * radius, workshop)),
  )
  const piledUp: ReadonlySet<Placed> = new Set(
    planes.flatMap(({ piled }) => piled.piles.flatMap(pile => pile.slice(1).map(({ feature }) => feature))),
  )
  const stands = ({ feature }: Bored | Hollow) => !piledUp.has(feature)
  const encounters = encountersOf(bores.filter(stands), hollows.filter(stands), seen, workshop, reach)
  return {
    wood,
    bores,
    hollows,
    missed,
    encounters,
    hollowsNear: hollowsNear(hollows.filter(stands), wood, workshop.wall),
    pairs: new Set(encounters.map(({ first, second }) => pairName(first.feature, second.feature))),
    outward: outwardOf(bores, wood, seen, workshop),
  }
}
