import type { Finding } from '../finding/finding.ts'
import { fault } from './fault.ts'
import { inOrder } from './in-order.ts'
import type { Plan } from './plan.ts'
import { wrongKind } from './schema/leaf.ts'
import { findingsOf } from './schema/reader.ts'
import { decode } from './text/decode.ts'
import { readerFor } from './version.ts'
import { whereabouts } from './whereabouts.ts'
import { buildTree } from './yaml/build-tree.ts'
import { parseYaml } from './yaml/parse-yaml.ts'
import { isMapping } from './yaml/tree.ts'

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
  const { text, findings } = decode(input, file)
  if (findings.length > 0) return { text, findings }
  const read = readText(text, file)
  const listed = inOrder(read.findings, file)
  const sound = read.plan !== undefined && !listed.some(finding => finding.severity === 'error')
  return sound ? { plan: read.plan, findings: listed, text } : { findings: listed, text }
}

type Reading = { readonly plan?: Plan | undefined; readonly findings: readonly Finding[] }

function readText(text: string, file: string): Reading {
  const { document, findings: syntax } = parseYaml(text, file)
  if (syntax.length > 0 || !document) return { findings: syntax }
  const { root, findings: inTree } = buildTree(document, text, file)
  if (!root) {
    const empty = fault('empty-plan', { file, from: 0, to: 0 }, {})
    return { findings: inTree.length > 0 ? inTree : [empty] }
  }
  if (!isMapping(root)) {
    return { findings: [...inTree, wrongKind(root, 'the keys of a plan, such as paperjig: 1')] }
  }
  const version = readerFor(root)
  if (!('reader' in version)) return { findings: version.finding ? [...inTree, version.finding] : inTree }
  const result = version.reader.safeParse(root)
  const faults = [...inTree, ...(result.success ? [] : findingsOf(result.error))]
  return {
    plan: result.success ? { file, ...result.data } : undefined,
    findings: faults.length === 0 ? faults : faults.map(whereabouts(root)),
  }
}
