import { type FaceName, sayFace } from '../../finding/face-name.ts'
import type { Located } from '../../plan/plan.ts'
import { reportUnknownEdge } from './cut-builder.ts'
import type { Site } from './site.ts'

/**
 * Where the front or the back meets an end or edge. `turned`: the plan names the two the other way round, so that what
 * it gives as the width on the face is the depth into it.
 */
export type Arris = { readonly face: 'front' | 'back'; readonly edge: FaceName; readonly turned: boolean }

/** The arris between a face and one of its edges. Faults: a name that is none, and two faces that do not meet in one. */
export function arrisBetween(
  site: Site,
  face: Located<FaceName>,
  edge: Located<FaceName>,
): Arris | undefined {
  for (const name of [face, edge]) {
    if (site.frame(name.value) !== undefined) continue
    reportUnknownEdge(site, name)
    return undefined
  }
  const [a, b] = [face.value, edge.value]
  if (isBroad(a) && !isBroad(b)) return { face: a, edge: b, turned: false }
  if (isBroad(b) && !isBroad(a)) return { face: b, edge: a, turned: true }
  const why = isBroad(a) || areApart(a, b) ? 'apart' : 'corner'
  site.context.report({
    rule: 'no-arris',
    severity: 'error',
    places: [{ source: edge.source }],
    facts: { face: sayFace(a), edge: sayFace(b), why },
  })
  return undefined
}

function isBroad(face: FaceName): face is 'front' | 'back' {
  return face === 'front' || face === 'back'
}

/** Whether two ends or edges are one, or lie across from each other. */
function areApart(a: FaceName, b: FaceName): boolean {
  const across: Partial<Record<FaceName, FaceName>> = {
    left: 'right',
    right: 'left',
    top: 'bottom',
    bottom: 'top',
  }
  return a === b || across[a] === b
}
