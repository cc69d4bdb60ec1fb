import { pointLength } from '../../workshop/bits.ts'
import type { BitTip } from '../../workshop/workshop.ts'
import type { Bore } from '../feature.ts'

/** What a bore's bit ends in: as the plan says, else as the bits of the shop do. */
export function tipOf({ tip }: Bore, { point, pointAngle, spur }: BitTip): BitTip {
  return { point: tip?.point ?? point, pointAngle: tip?.angle ?? pointAngle, spur }
}

/** How far the bit goes deeper than the full diameter, in millimetres along the axis. */
export function tipLength(bore: Bore, bits: BitTip): number {
  return pointLength(tipOf(bore, bits), bore.diameter.mm)
}
