import type { FaceName } from '../finding/face-name.ts'
import type { Source } from '../finding/source.ts'
import type { FitName } from '../plan/fit-plan.ts'
import type { Size } from './size.ts'

/** A dowel, axle or rod. A size that the drawing does not give is `unknown`. */
export type Pin = {
  readonly id: string
  readonly label: string
  readonly note?: string
  readonly page?: string
  readonly diameter: Size | 'unknown'
  readonly length?: Size | 'unknown'
  readonly count?: number
  readonly wood?: string
  readonly source: Source
}

/** What a reference in a joint leads to. */
export type Target = {
  readonly part: string
  /** "side-frame/2"; absent: every piece of the part. */
  readonly piece?: string
  /** The ids of the features, of a row one or all, on two faces both; none where a side is meant, or the part is undrawn. */
  readonly features: readonly string[]
  readonly face?: FaceName
  readonly source: Source
}

/** How one goes into the other: by a fit of the shop, or with so much room in all. */
export type Fit = FitName | { readonly clearance: Size | 'unknown' }

export type PinJoint = {
  readonly kind: 'pin'
  readonly pin: string
  /** The holes in the order in which the pin goes through them. */
  readonly through: readonly Target[]
  readonly source: Source
}

export type TongueJoint = {
  readonly kind: 'tongue'
  /** The end or edge that goes in, or the whole part where no side is named. */
  readonly tongue: Target
  readonly into: Target
  readonly fit?: Fit
  readonly source: Source
}

export type Joint = PinJoint | TongueJoint
