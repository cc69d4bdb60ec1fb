import type { Bored } from '../../model/inside/bored.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import type { Outward } from '../subject/outward.ts'
import { clearBesideHole } from '../wood/limits.ts'

/** What is wanted between a hole and the outside: under its end as under every point, else as beside every hole. */
export function clearToOutside({ bored, where }: Outward, workshop: Workshop): number {
  return where === 'end' ? workshop.clear.underPoint : clearBesideFlank(bored, workshop)
}

function clearBesideFlank({ radius }: Bored, workshop: Workshop): number {
  return clearBesideHole(2 * radius, workshop)
}
