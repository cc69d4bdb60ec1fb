import type { Finding } from '../../src/finding/finding.ts'
import { locate } from '../../src/finding/locate.ts'
import { sentence } from '../../src/finding/sentence.ts'
import { buildModel } from '../../src/model/build/model.ts'
import type { Model } from '../../src/model/part.ts'
import { type ReadPlan, readPlan } from '../../src/plan/read-plan.ts'
import { maxFindings } from '../../src/yaml/limits.ts'

const style = { unit: 'inch', precision: 25.4 / 64 } as const

/** What one finding may take, in letters: its facts as JSON, and its sentence. */
const longestFinding = 4_000
const longestSentence = 600

/** What cannot be seen or would move what stands around it. */
const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Co}]/u

/**
 * Reads any input and holds the reader to its promise: a plan, or findings with places; never an exception, and
 * nothing without bound. Gives back what was read, and throws an error that says which promise was broken.
 */
export function keptPromise(input: string | Uint8Array): ReadPlan {
  const read = readPlan(input, 'plan.yaml')
  const { plan, findings, text } = read
  const errors = findings.filter(({ severity }) => severity === 'error')
  promise((plan === undefined) === errors.length > 0, 'a plan exactly where there is no error')
  promise(findings.length <= maxFindings + 1, 'not too many findings')
  let last = 0
  for (const finding of findings) {
    wellSaid(finding, text)
    const { from } = finding.places[0]!.source!
    promise(last <= from, 'findings in the order of the text')
    last = from
  }
  const said = findings.map(finding => JSON.stringify(finding))
  promise(new Set(said).size === said.length, 'each finding once')
  return read
}

/**
 * The same, and works the plan out: there is a model, or there are findings with places. More faults than these in
 * one model would be one fault many times over.
 */
export function keptPromiseOfModel(input: string | Uint8Array): ReadPlan & { readonly model?: Model } {
  const read = keptPromise(input)
  if (read.plan === undefined) return read
  const { model, findings } = buildModel(read.plan)
  promise((model === undefined) === findings.length > 0, 'a model exactly where there is no finding')
  for (const finding of findings) wellSaid(finding, read.text)
  return { ...read, findings, ...(model === undefined ? {} : { model }) }
}

/** A finding of bounded size, whose places lie in the text, and whose sentence can be seen. */
function wellSaid(finding: Finding, text: string): void {
  promise(JSON.stringify(finding).length <= longestFinding, 'a finding of bounded size')
  promise(finding.places.length > 0, 'a place')
  for (const { source } of finding.places) {
    promise(source?.file === 'plan.yaml', 'the name of the file')
    promise(
      0 <= source!.from && source!.from <= source!.to && source!.to <= text.length,
      'a place in the text',
    )
  }
  const { line, column } = locate(text, finding.places[0]!.source!.from)
  promise(line >= 1 && column >= 1, 'a line and a column')
  const words = sentence(finding, style)
  promise(words.length > 0 && words.length <= longestSentence, 'a sentence of bounded size')
  promise(!unseen.test(words), 'a sentence that can be seen')
}

function promise(kept: boolean, what: string): void {
  if (!kept) throw new Error(`the reader promises ${what}`)
}
