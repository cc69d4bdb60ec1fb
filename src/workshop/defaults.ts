import { millimetresPerInch } from '../length/unit.ts'
import { steps, union } from './size-set.ts'
import type { Workshop } from './workshop.ts'

const inch = millimetresPerInch
const hour = 60

/**
 * The shop of somebody who has not said anything about it. What has no source beside it is common practice, no
 * source.
 */
export const defaultWorkshop: Workshop = {
  bits: {
    inch: union(steps(inch / 32, inch / 2, inch / 64), steps(inch / 2, inch, inch / 16)),
    mm: steps(1, 13, 0.5),
    point: 'twist',
    pointAngle: (118 * Math.PI) / 180,
    spur: inch / 16,
  },
  circleTemplates: {
    inch: union(steps(inch / 16, 2 * inch, inch / 16), steps(2 * inch, 3 * inch, inch / 8)),
    mm: union(steps(1, 20, 1), steps(20, 60, 2)),
  },
  // Source: shop tables of kerfs, a full one 0.125 in, band saws 0.020 to 0.035 in
  kerf: { circular: inch / 8, band: 0.035 * inch },
  blank: { length: inch / 4, width: inch / 8 },
  sanding: { small: inch / 32, large: inch / 16, smallBelow: 3 * inch },
  fits: {
    turning: { small: inch / 64, large: inch / 32, smallUpTo: inch / 4 },
    push: 0,
    easy: inch / 64,
    glue: 0,
    machinedSlot: 0.005 * inch,
    dowelSpare: inch / 16,
  },
  clear: { diameters: 1, least: inch / 32, most: (3 * inch) / 8, breaksBelow: 1 / 2, underPoint: inch / 16 },
  wall: inch / 16,
  neck: { along: inch / 8, across: inch / 4 },
  smallestPiece: 3 * inch,
  // yellow glue
  glue: { open: 5, clamps: hour, machining: 12 * hour, full: 24 * hour },
  // a laser printer leaves 4.2 mm, an inkjet 3 mm at the sides and up to 12.7 mm at the edge that leaves the machine last
  printer: { margin: { left: inch / 4, right: inch / 4, top: inch / 4, bottom: inch / 2 } },
}

/** The allowance for a part of this length and width, in millimetres. */
export function sandingAllowance({ sanding }: Workshop, length: number, width: number): number {
  return Math.max(length, width) < sanding.smallBelow ? sanding.small : sanding.large
}
