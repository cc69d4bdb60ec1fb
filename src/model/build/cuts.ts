import type { CutPlan, PartPlan } from '../../plan/plan.ts'
import type { Feature } from '../feature.ts'
import { buildCut } from './cut.ts'
import { placedIn } from './placed-in.ts'
import type { Site } from './site.ts'

/** The cuts of a part, in the plan's order, each built after the one that it is placed from. */
export function buildCuts(site: Omit<Site, 'built' | 'cutNames'>, plan: PartPlan): readonly Feature[] {
  const cuts = new Map(plan.cuts.map(cut => [cut.id.value, cut]))
  const built = new Map<string, readonly Feature[]>()
  const whole: Site = { ...site, built: name => built.get(name), cutNames: [...cuts.keys()] }

  for (const cut of plan.cuts) {
    const chain = chainTo(cut, cuts, built)
    if ('cycle' in chain) {
      reportCycle(site, chain.cycle)
      for (const { id } of chain.cycle) built.set(id.value, [])
    }
    for (const next of chain.cuts.toReversed()) {
      if (!built.has(next.id.value)) built.set(next.id.value, buildCut(inCut(whole, next), next))
    }
  }
  return plan.cuts.flatMap(({ id }) => built.get(id.value) ?? [])
}

/** The cut and those that have to be built before it, it first; a cycle where they lead back to one of them. */
function chainTo(
  first: CutPlan,
  cuts: ReadonlyMap<string, CutPlan>,
  built: ReadonlyMap<string, unknown>,
): { readonly cuts: readonly CutPlan[]; readonly cycle?: readonly CutPlan[] } {
  const chain = new Set<CutPlan>()
  let cut: CutPlan | undefined = first
  while (cut !== undefined && !built.has(cut.id.value)) {
    if (chain.has(cut)) {
      const all = [...chain]
      return { cuts: all, cycle: all.slice(all.indexOf(cut)) }
    }
    chain.add(cut)
    const before = placedFrom(cut)
    cut = before === undefined ? undefined : cuts.get(before)
  }
  return { cuts: [...chain] }
}

/** The name of the cut that this one is placed from. */
function placedFrom(cut: CutPlan): string | undefined {
  const at = cut.kind === 'engrave' ? cut.drawing.at : 'at' in cut ? cut.at : undefined
  return at?.kind === 'from-feature' ? at.feature.value.split('.')[0] : undefined
}

function reportCycle({ context }: Pick<Site, 'context'>, cycle: readonly CutPlan[]): void {
  const [first] = cycle
  if (first === undefined) return
  context.report({
    rule: 'place-cycle',
    severity: 'error',
    places: cycle.map(({ id, source }) => ({ source, feature: id.value })),
    facts: { chain: [...cycle, first].map(({ id }) => id.value).join(' → ') },
  })
}

/** What is found wrong in a cut says so. */
function inCut(site: Site, cut: CutPlan): Site {
  const { context } = site
  const feature = cut.id.value
  const part = context.place.part
  return {
    ...site,
    context: {
      ...context,
      place: { ...context.place, feature },
      report: finding => context.report(placedIn(finding, { feature })),
      confirmed: context.confirmed || (part !== undefined && context.confirms(part, feature)),
    },
  }
}
