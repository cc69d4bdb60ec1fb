import type { Finding } from '../../finding/finding.ts'
import type { Source } from '../../finding/source.ts'
import { nearestName } from '../../length/nearest-name.ts'
import type { Plan } from '../../plan/plan.ts'
import type { DefinedName, ScaledSize } from '../provenance.ts'
import type { Context } from './context.ts'

/** What is noted down while a model is built. */
export type Notes = {
  readonly findings: readonly Finding[]
  readonly scaled: readonly ScaledSize[]
  readonly names: () => readonly DefinedName[]
  readonly notes: Pick<Context, 'report' | 'noteScaled' | 'noteUse' | 'confirms'>
}

export function takeNotes(plan: Plan): Notes {
  const findings: Finding[] = []
  const scaled: ScaledSize[] = []
  const written = new Set<string>()
  const uses = new Map<string, Map<string, Source>>()
  const confirmed = new Set(plan.confirmed.map(({ name, cut }) => keyOf(name, cut)))
  const placesNoted = new Set<string>()
  return {
    findings,
    scaled,
    names: () => definedNames(plan, (kind, name) => [...(uses.get(keyOf(kind, name))?.values() ?? [])]),
    notes: {
      // a size that stands at several cuts, or on several faces, is faulty once
      report: finding => {
        const key = JSON.stringify(finding)
        if (!written.has(key)) findings.push(finding)
        written.add(key)
      },
      noteScaled: size => {
        const { from, to } = size.size.source
        const key = keyOf(String(from), String(to))
        if (!placesNoted.has(key)) scaled.push(size)
        placesNoted.add(key)
      },
      noteUse: (kind, name, at) => {
        const key = keyOf(kind, name)
        const places = uses.get(key) ?? new Map<string, Source>()
        uses.set(key, places.set(keyOf(String(at.from), String(at.to)), at))
      },
      confirms: (name, cut) => confirmed.has(keyOf(name, cut)),
    },
  }
}

function keyOf(first: string, second: string | undefined): string {
  return second === undefined ? first : `${first}.${second}`
}

function definedNames(
  plan: Plan,
  usesOf: (kind: DefinedName['kind'], name: string) => readonly Source[],
): readonly DefinedName[] {
  const named =
    (kind: DefinedName['kind']) =>
    ({ id, label }: { readonly id: Plan['title']; readonly label?: Plan['title'] }): DefinedName => ({
      kind,
      name: id.value,
      ...(label ? { label: label.value } : {}),
      source: id.source,
      uses: usesOf(kind, id.value),
    })
  return [
    ...plan.names.map(({ name }) => named('let')({ id: name })),
    ...plan.stock.map(named('stock')),
    ...plan.pins.map(named('pin')),
    ...plan.parts.map(named('part')),
  ]
}

/** What `confirmed` names and the plan does not have. */
export function reportUnknownConfirmed(plan: Plan, report: Context['report']): void {
  const cutsOf = new Map(plan.parts.map(({ id, cuts }) => [id.value, cuts.map(cut => cut.id.value)]))
  const others = [...plan.names.map(n => n.name), ...plan.stock.map(s => s.id), ...plan.pins.map(p => p.id)]
  const known = [...cutsOf.keys(), ...others.map(({ value }) => value)]
  for (const { name, cut, source } of plan.confirmed) {
    const within = cut === undefined ? known : cutsOf.get(name)
    const found = within === undefined || cut === undefined ? name : cut
    const allowed = within ?? [...cutsOf.keys()]
    if (allowed.includes(found) && within !== undefined) continue
    const nearest = nearestName(found, allowed)
    const facts = { found, allowed: allowed.join(', '), ...(nearest === undefined ? {} : { nearest }) }
    report({ rule: 'unknown-confirmed', severity: 'error', places: [{ source }], facts })
  }
}
