import { evaluateNamed } from './evaluate.ts'
import type { Expression } from './expression.ts'
import { faultAt, type LengthFault } from './fault.ts'
import { emptyScope, type NamedValue, type Scope, within } from './scope.ts'
import type { Unit } from './unit.ts'
import type { WrittenSize } from './written-size.ts'

/** A name with the size that it stands for. */
export type Definition = { readonly name: string; readonly size: WrittenSize }

/** What is wrong with a definition; the offsets are those in its written size. */
export type DefinitionFault = { readonly name: string; readonly fault: LengthFault }

/** More faults than these in one table help nobody. */
const mostFaults = 100

/** Of a longer cycle a message shows the beginning. */
const longestCycle = 12

type Use = { readonly name: string; readonly from: number; readonly to: number }

type Visit = { readonly definition: Definition; readonly uses: readonly Use[]; next: number }

/**
 * What each of a table of names stands for, in whatever order they use each other. A name whose formula has a
 * fault, or is one of a cycle, is `faulty` in the result, and so is every name that uses it; the fault is told
 * once, where it can be mended. Of two definitions of one name the first counts. The work grows with the length
 * of the table and not with the ways through it.
 *
 * @param outer names that the table may use and does not define
 */
export function resolveNames(
  definitions: readonly Definition[],
  unit: Unit,
  outer: Scope = emptyScope,
): { readonly values: ReadonlyMap<string, NamedValue>; readonly faults: readonly DefinitionFault[] } {
  const byName = new Map<string, Definition>()
  for (const definition of definitions) {
    if (!byName.has(definition.name)) byName.set(definition.name, definition)
  }
  const values = new Map<string, NamedValue>()
  const faults: DefinitionFault[] = []
  const scope = within({ get: name => values.get(name), keys: () => byName.keys() }, outer)
  // once there are enough faults, no time is spent on finding what was meant
  const hurried: Scope = { get: scope.get, keys: () => [] }

  for (const definition of byName.values()) {
    if (!values.has(definition.name)) visit(definition)
  }
  return { values, faults }

  /** Depth first with a stack of our own: a chain of names may be longer than the machine's. */
  function visit(first: Definition): void {
    const path: Visit[] = [begun(first)]
    const depthOf = new Map([[first.name, 0]])
    for (let top = path.at(-1); top !== undefined; top = path.at(-1)) {
      const use = top.uses[top.next]
      const used = use && byName.get(use.name)
      if (use === undefined) {
        settle(top.definition)
        depthOf.delete(top.definition.name)
        path.pop()
      } else if (used === undefined || values.has(use.name)) {
        top.next += 1
      } else if (depthOf.has(use.name)) {
        top.next += 1
        closeCycle(top.definition, use, path, depthOf.get(use.name)!)
      } else {
        depthOf.set(use.name, path.length)
        path.push(begun(used))
      }
    }
  }

  function settle({ name, size }: Definition): void {
    if (values.has(name)) return
    const result = evaluateNamed(size, faults.length < mostFaults ? scope : hurried, unit)
    values.set(name, result.ok ? result.value : { kind: 'faulty' })
    if (!result.ok && result.fault.code !== 'faulty-name') report(name, result.fault)
  }

  function closeCycle(last: Definition, use: Use, path: readonly Visit[], start: number): void {
    if (values.has(last.name)) return
    values.set(last.name, { kind: 'faulty' })
    const names = path.slice(start, start + longestCycle).map(visit => visit.definition.name)
    if (start + longestCycle < path.length) names.push('…')
    const found = [...names, use.name].join(' → ')
    report(last.name, {
      ...faultAt(last.size.written, use, 'cycle', 'a name that does not use itself'),
      found,
    })
  }

  function report(name: string, fault: LengthFault): void {
    if (faults.length < mostFaults) faults.push({ name, fault })
  }
}

function begun(definition: Definition): Visit {
  const { size } = definition
  return { definition, uses: size.kind === 'size' ? usesIn(size.expression) : [], next: 0 }
}

function usesIn(expression: Expression): readonly Use[] {
  switch (expression.kind) {
    case 'name':
      return [expression]
    case 'negative':
      return usesIn(expression.of)
    case 'operation':
      return [...usesIn(expression.left), ...usesIn(expression.right)]
    case 'call':
      return expression.arguments.flatMap(usesIn)
    default:
      return []
  }
}
