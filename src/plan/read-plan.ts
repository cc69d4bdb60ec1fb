import type { Finding } from '../finding/finding.ts'
import { isMapping } from '../yaml/document/tree.ts'
import { fault } from '../yaml/fault.ts'
import { inOrder } from '../yaml/in-order.ts'
import { type ReadDocument, readDocument } from '../yaml/read-document.ts'
import { wrongKind } from '../yaml/schema/leaf.ts'
import { findingsOf } from '../yaml/schema/reader.ts'
import type { Plan } from './plan.ts'
import { readerFor } from './version.ts'
import { whereabouts } from './whereabouts.ts'

/**
 * What came of reading a plan file. `text` is the text in which the offsets of all sources count; it is empty
 * where the file was too large to be looked at. There is a plan exactly where no finding is an error.
 */
export type ReadPlan = { readonly plan?: Plan; readonly findings: readonly Finding[]; readonly text: string }

/**
 * Reads a plan file. Never throws, and takes bounded time and memory, whatever the input is; every finding says
 * where. `file` is the name that messages call it by.
 */
export function readPlan(input: string | Uint8Array, file: string): ReadPlan {
  const document = readDocument(input, file)
  const { plan, findings } = planIn(document, file)
  const all = inOrder(findings, file)
  const sound = plan !== undefined && !all.some(finding => finding.severity === 'error')
  return { ...(sound ? { plan } : {}), findings: all, text: document.text }
}

type Reading = { readonly plan?: Plan | undefined; readonly findings: readonly Finding[] }

function planIn({ root, findings: before }: ReadDocument, file: string): Reading {
  if (!root)
    return { findings: before.length > 0 ? before : [fault('empty-plan', { file, from: 0, to: 0 }, {})] }
  if (!isMapping(root))
    return { findings: [...before, wrongKind(root, 'the keys of a plan, such as paperjig: 1')] }
  const version = readerFor(root)
  if (!('reader' in version)) return { findings: version.finding ? [...before, version.finding] : before }
  const result = version.reader.safeParse(root)
  const faults = [...before, ...(result.success ? [] : findingsOf(result.error))]
  return {
    plan: result.success ? { file, ...result.data } : undefined,
    findings: faults.length === 0 ? faults : faults.map(whereabouts(root)),
  }
}
