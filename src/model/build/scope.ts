import { evaluate } from '../../length/evaluate.ts'
import { resolveNames } from '../../length/resolve-names.ts'
import { type NamedValue, type Scope, within } from '../../length/scope.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Context } from './context.ts'
import type { Resolved } from './cut-builder.ts'
import { noteScaled, noting, reportFault } from './resolve-size.ts'

type Notes = Pick<Context, 'report' | 'noteScaled' | 'noteUse' | 'confirms'>

/** The names of a plan's `let`, worked out; what is wrong with one is reported where it stands. */
export function planScope(plan: Plan, notes: Notes): Scope {
  const definitions = plan.names.map(({ name, length: { size } }) => ({
    name: name.value,
    size: size.kind === 'size' && notes.confirms(name.value) ? { ...size, scaled: false } : size,
  }))
  const { values, faults } = resolveNames(definitions, plan.units)
  for (const { name, fault } of faults) {
    const definition = plan.names.find(n => n.name.value === name)
    if (definition !== undefined) reportFault(notes, fault, definition.length.source)
  }
  for (const [i, { length }] of plan.names.entries()) {
    const { name, size } = definitions[i]!
    const { source } = length
    // once more, now for the names that it uses
    evaluate(size, noting({ scope: values, noteUse: notes.noteUse }, source), plan.units)
    const value = values.get(name)
    if (value?.kind !== 'length' || value.basis !== 'scaled') continue
    noteScaled({ ...notes, place: {} }, { ...value, written: size.written, source }, size)
  }
  return values
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
