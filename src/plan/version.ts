import type { Finding } from '../finding/finding.ts'
import { excerpt } from '../finding/visible.ts'
import { isLeaf, type Mapping, placeOf } from '../yaml/document/tree.ts'
import { fault } from '../yaml/fault.ts'
import { wrongKind } from '../yaml/schema/leaf.ts'
import type { Reader } from '../yaml/schema/reader.ts'
import type { Plan } from './plan.ts'
import { plan1 } from './schema/plan-1.ts'

/** A reader for every version of the plan file that was ever released. */
const readers: ReadonlyMap<string, Reader<Omit<Plan, 'file'>>> = new Map([['1', plan1]])

/**
 * The reader for the version that a plan names. A plan of an unknown version is not looked at further: its keys
 * may mean something else.
 */
export function readerFor(plan: Mapping): { reader: Reader<Omit<Plan, 'file'>> } | { finding?: Finding } {
  const wanted = [...readers.keys()].join(' or ')
  const written = plan.paperjig
  if (written === undefined) {
    const facts = {
      key: 'paperjig',
      within: 'a plan',
      wanted: `the version of its format, paperjig: ${wanted}`,
    }
    const first = [...placeOf(plan).keys.values()][0] ?? placeOf(plan).source
    return { finding: fault('missing-key', first, facts) }
  }
  if (!isLeaf(written) || written.empty) {
    return isLeaf(written) && written.reported ? {} : { finding: wrongKind(written, wanted) }
  }
  const reader = readers.get(written.text)
  if (reader) return { reader }
  return { finding: fault('wrong-version', written.source, { found: excerpt(written.text), wanted }) }
}
