import { type Body, hullOfRings } from '../../geometry/solid/body.ts'
import { section } from '../../geometry/solid/ring.ts'
import { apart } from '../../geometry/solid/separation.ts'
import { type Bored, planeOf } from '../../model/inside/bored.ts'
import type { Hollow } from '../../model/inside/hollow.ts'
import type { Wall } from '../../model/inside/walls.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Encounter } from '../subject/encounters.ts'
import { isBored } from '../subject/is-bored.ts'

/** A through hole that comes out on a cut, and the wall that it comes out of. */
export type Landing = { readonly bored: Bored; readonly on: Bored | Hollow; readonly wall: Wall }

/** Of two cuts that meet the hole that comes out where the other begins; nothing where they meet elsewhere. */
export function landsOn({ first, second }: Pick<Encounter, 'first' | 'second'>): Landing | undefined {
  return landing(first, second) ?? (isBored(second) ? landing(second, first) : undefined)
}

function landing(bored: Bored, on: Bored | Hollow): Landing | undefined {
  const wall = bored.stretches.at(-1)?.to.wall
  if (!bored.through || wall === undefined) return undefined
  const exit = section(bored.bar, wall.plane)
  const opening = openingOf(on)
  if (exit === undefined || opening === undefined) return undefined
  const found = apart(hullOfRings([exit]), opening, { maxDeviation: coincident, reach: 2 * coincident })
  return found?.distance === 0 ? { bored, on, wall } : undefined
}

/** What of the face a cut takes away where it begins. */
function openingOf(cut: Bored | Hollow): Body | undefined {
  if (!isBored(cut)) return cut.opening
  const rim = section(cut.bar, planeOf(cut.face))
  return rim && hullOfRings([rim])
}
