import { middleOfBounds, regionBounds } from '../../geometry/measure/bounds.ts'
import { inscribedCircle } from '../../geometry/measure/inscribed-circle.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import { nearestOnRegion } from '../../geometry/measure/nearest.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { millimetresPerInch } from '../../length/unit.ts'
import { coincident } from '../../number/tolerance.ts'
import type { EntryPlan } from '../../plan/plan.ts'
import { sizesFor } from '../../workshop/bits.ts'
import type { EntryHole, Missing } from '../feature.ts'
import { isKnown, missingSizes } from './cut-builder.ts'
import type { FaceFrame } from './face-frame.ts'
import { place } from './position.ts'
import { resolvePositive } from './resolve-size.ts'
import type { Site } from './site.ts'

/** Wide enough for any blade of a scroll saw, its pin included. Common practice, no source. */
const usual = { inch: millimetresPerInch / 4, mm: 6 } as const

/** What the rim of the hole keeps clear of the line, so that a bit that wanders spoils nothing. Common practice, no source. */
const clear = millimetresPerInch / 32

/** How near to the roomiest place in the waste is near enough, in millimetres. */
const placeDeviation = 0.1

/**
 * The hole for the blade: where and as wide as the plan says, else in the roomiest place of the waste, with the usual
 * bit or the largest smaller one that fits. `none` where no bit of the shop does.
 */
export function entryHole(
  site: Site,
  frame: FaceFrame,
  plan: EntryPlan | undefined,
  waste: Region,
): { readonly entry: EntryHole } | { readonly missing: readonly Missing[] } | 'none' | undefined {
  const { context } = site
  const bit = plan?.bit && resolvePositive(context, plan.bit, 'the entry hole')
  if (plan?.bit && bit === undefined) return undefined
  const placed = plan?.at && place(site, frame, plan.at, { along: 0, across: 0 })
  if (plan?.at && placed === undefined) return undefined
  const missing = [
    ...missingSizes({ 'width of the entry hole': bit }),
    ...(placed && 'missing' in placed ? placed.missing : []),
  ]
  if (missing.length > 0) return { missing }
  const given = plan?.at !== undefined || plan?.bit !== undefined
  const centre = placed && 'at' in placed ? placed.at : roomiestPlace(waste)
  if (centre === undefined) return 'none'
  if (isKnown(bit)) return { entry: { centre, diameter: bit.mm, given } }
  const diameter = largestBit(site, roomAt(waste, centre))
  return diameter === undefined ? 'none' : { entry: { centre, diameter, given } }
}

/**
 * The middle of the largest circle in the waste. None is wider than the box round the waste: where that about the middle
 * of the box is as wide, as in a rectangle, round corners or not, none has to be searched for.
 */
function roomiestPlace(waste: Region): Point | undefined {
  const box = regionBounds(waste)
  const middle = middleOfBounds(box)
  const most = Math.min(box.right - box.left, box.top - box.bottom) / 2
  const nearest = nearestOnRegion(waste, middle)?.distance ?? 0
  const isWidest = nearest >= most - coincident && pointInRegion(waste, middle) === 'inside'
  return isWidest ? middle : inscribedCircle(waste, placeDeviation)?.centre
}

/** The widest hole about a point that keeps clear of the line. */
function roomAt(waste: Region, centre: Point): number {
  return 2 * ((nearestOnRegion(waste, centre)?.distance ?? 0) - clear)
}

function largestBit({ context }: Site, room: number): number | undefined {
  const most = Math.min(room, usual[context.unit])
  return sizesFor(context.workshop.bits, context.unit).findLast(size => size <= most)
}
