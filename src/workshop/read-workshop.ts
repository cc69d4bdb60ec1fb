import type { Finding } from '../finding/finding.ts'
import type { Source } from '../finding/source.ts'
import { excerpt } from '../finding/visible.ts'
import type { Unit } from '../length/unit.ts'
import { isMapping, type Mapping, placeOf } from '../yaml/document/tree.ts'
import { fault } from '../yaml/fault.ts'
import { inOrder } from '../yaml/in-order.ts'
import { type ReadDocument, readDocument } from '../yaml/read-document.ts'
import { choice, leaf, wrongKind } from '../yaml/schema/leaf.ts'
import { type Fail, findingsOf, type Reader, readWithin } from '../yaml/schema/reader.ts'
import type { Located } from '../yaml/written.ts'
import { defaultWorkshop } from './defaults.ts'
import { version, versionKey, workshopFile } from './file/workshop-file.ts'
import type { Workshop } from './workshop.ts'

/** There is a workshop exactly where no finding is an error. `text` is the text in which all offsets count. */
export type ReadWorkshop = {
  readonly workshop?: Workshop
  readonly findings: readonly Finding[]
  readonly text: string
}

/**
 * Reads a workshop file: what it does not say is as in {@link defaultWorkshop}, and so is all of it where nothing
 * stands in the file. Never throws, and takes bounded time and memory, whatever the input is.
 */
export function readWorkshop(input: string | Uint8Array, file: string): ReadWorkshop {
  const document = readDocument(input, file)
  const { workshop, findings } = workshopIn(document)
  const all = inOrder(findings, file)
  const sound = workshop !== undefined && !all.some(({ severity }) => severity === 'error')
  return { ...(sound ? { workshop } : {}), findings: all, text: document.text }
}

type Reading = { readonly workshop?: Workshop | undefined; readonly findings: readonly Finding[] }

function workshopIn({ root, findings: before }: ReadDocument): Reading {
  if (!root) return before.length > 0 ? { findings: before } : { workshop: defaultWorkshop, findings: [] }
  if (!isMapping(root)) {
    return { findings: [...before, wrongKind(root, `the keys of a workshop, such as ${versionKey}: 1`)] }
  }
  const findings = [...before]
  const fail: Fail = finding => findings.push(finding)
  const first = [...placeOf(root).keys.values()][0] ?? placeOf(root).source
  const ofThisVersion = required(root, versionKey, versionNumber, first, fail)
  if (ofThisVersion === undefined) return { findings }
  const units = required(root, 'units', unit, first, fail)
  if (units === undefined) return { findings }
  const result = workshopFile.reader(units.value).safeParse(root)
  if (result.success) return { workshop: result.data(defaultWorkshop), findings }
  return { findings: [...findings, ...findingsOf(result.error)] }
}

const versionNumber: Reader<true> = leaf(version, ({ text, source }, fail) =>
  text === version
    ? true
    : void fail(fault('wrong-version', source, { found: excerpt(text), wanted: version })),
)

const unit: Reader<Located<Unit>> = choice('a unit', ['inch', 'mm'])

function required<T>(root: Mapping, key: string, type: Reader<T>, place: Source, fail: Fail): T | undefined {
  const node = root[key]
  if (node !== undefined) return readWithin(type, node, fail)
  const wanted = type.description ?? ''
  return void fail(fault('missing-key', place, { key, within: 'a workshop', wanted }))
}
