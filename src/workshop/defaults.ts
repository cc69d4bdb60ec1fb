import { millimetresPerInch } from '../length/unit.ts'
import type { Workshop } from './workshop.ts'

const inch = millimetresPerInch

/** The shop of somebody who has not said anything about it. */
export const defaultWorkshop: Workshop = {
  // common practice, no source
  sanding: { small: inch / 32, large: inch / 16, smallBelow: 3 * inch },
  // common practice, no source: a laser printer leaves 4.2 mm, an inkjet 3 mm at the sides and up to 12.7 mm at the
  // edge that leaves the machine last
  printer: { margin: { left: inch / 4, right: inch / 4, top: inch / 4, bottom: inch / 2 } },
}

/** The allowance for a part of this length and width, in millimetres. */
export function sandingAllowance({ sanding }: Workshop, length: number, width: number): number {
  return Math.max(length, width) < sanding.smallBelow ? sanding.small : sanding.large
}
