import type { Severity } from '../../finding/finding.ts'
import type { ClearWood, Workshop } from '../../workshop/workshop.ts'
import { type Cut, isHole } from '../subject/cut.ts'

/** The wood that a cut wants beside it: a hole by its diameter, anything else as thick as a wall of the shop. */
export function clearBeside(cut: Cut, { clear, wall }: Workshop): number {
  if (!isHole(cut)) return wall
  const { diameters, least, most } = clear
  return Math.max(least, Math.min(most, 2 * cut.radius * diameters))
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
