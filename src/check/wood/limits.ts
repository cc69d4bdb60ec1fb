import type { Severity } from '../../finding/finding.ts'
import type { ClearWood, Workshop } from '../../workshop/workshop.ts'
import { type Cut, isHole } from '../subject/cut.ts'

/** The wood that a cut wants beside it: a hole by its diameter, anything else as thick as a wall of the shop. */
export function clearBeside(cut: Cut, workshop: Workshop): number {
  return isHole(cut) ? clearBesideHole(2 * cut.radius, workshop) : workshop.wall
}

/** The wood that a hole of a diameter wants beside it. */
export function clearBesideHole(diameter: number, { clear }: Workshop): number {
  const { diameters, least, most } = clear
  return Math.max(least, Math.min(most, diameter * diameters))
}

/** Wood that is far too thin will break, and what is only thin may. */
export function severityOfThin(measured: number, limit: number, { breaksBelow }: ClearWood): Severity {
  return measured < breaksBelow * limit ? 'error' : 'warning'
}

/** The rule for holes in words. */
export function clearInWords({ clear }: Workshop, show: (mm: number) => string): string {
  const { diameters, least, most, breaksBelow } = clear
  return `${diameters === 1 ? 'one diameter' : `${diameters} diameters`} of the hole, at least ${show(least)}, and no more than ${show(most)} are asked for; an error below ${breaksBelow} of it, a warning above`
}
