import { signedArea } from '../../../geometry/measure/area.ts'
import type { Contour } from '../../../geometry/shape/contour.ts'
import { coincident } from '../../../number/tolerance.ts'
import type { OutlinePlan } from '../../../plan/plan.ts'
import type { OutlineFault } from '../../shape-facts.ts'

/** What keeps a contour from bounding a piece of wood. */
export function findFaults(contour: Contour, { source }: OutlinePlan): readonly OutlineFault[] {
  if (Math.abs(signedArea(contour)) <= coincident) return [{ kind: 'doubled', edges: [], source }]
  return []
}
