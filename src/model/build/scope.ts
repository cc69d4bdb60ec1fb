import type { Finding } from '../../finding/finding.ts'
import { resolveNames } from '../../length/resolve-names.ts'
import { type NamedValue, within } from '../../length/scope.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Context } from './context.ts'
import type { Resolved } from './cut-builder.ts'
import { reportFault } from './resolve-size.ts'

/** The names of a plan's `let`, worked out; what is wrong with one is reported where it stands. */
export function planScope(plan: Plan, report: (finding: Finding) => void): Context {
  const definitions = plan.names.map(({ name, length }) => ({ name: name.value, size: length.size }))
  const { values, faults } = resolveNames(definitions, plan.units)
  for (const { name, fault } of faults) {
    const definition = plan.names.find(n => n.name.value === name)
    if (definition !== undefined) reportFault({ report }, fault, definition.length.source)
  }
  return { unit: plan.units, scope: values, report }
}

/** The same with a part's own length, width and thickness, which formulas inside the part may use. */
export function withPartSizes(context: Context, sizes: Readonly<Record<string, Resolved>>): Context {
  const own = new Map<string, NamedValue>()
  for (const [name, size] of Object.entries(sizes)) {
    if (size === 'unknown') own.set(name, { kind: 'unknown', names: [name] })
    else if (size !== undefined) own.set(name, { kind: 'length', mm: size.mm, basis: size.basis })
  }
  return { ...context, scope: within(own, context.scope) }
}
