import { type Document, isScalar, visit, type YAMLError } from 'yaml'
import type { Finding } from '../../finding/finding.ts'
import { lineAround } from '../../finding/locate.ts'
import { excerpt } from '../../finding/visible.ts'
import { fault } from '../fault.ts'
import { maxFindings } from '../limits.ts'
import { colonWithoutSpace } from './colon-without-space.ts'
import { wantedFor } from './syntax-wording.ts'

/**
 * What is not YAML in a document, in the maker's words, at most one fault a line: what follows on the same line
 * is nearly always a consequence of the first.
 */
export function syntaxFaults(document: Document.Parsed, text: string, file: string): readonly Finding[] {
  const problems = [
    ...document.errors,
    ...document.warnings.filter(warning => warning.code === 'BAD_DIRECTIVE'),
  ].sort((a, b) => a.pos[0] - b.pos[0])
  const found: Finding[] = []
  let lineOfLast = -1
  for (const problem of problems) {
    if (found.length > maxFindings) break
    const line = lineAround(text, problem.pos[0])
    if (line.from === lineOfLast) continue
    lineOfLast = line.from
    found.push(syntaxFault(problem, { document, text, file, line }))
  }
  return found
}

type Surroundings = {
  readonly document: Document.Parsed
  readonly text: string
  readonly file: string
  readonly line: { readonly text: string; readonly from: number }
}

function syntaxFault(problem: YAMLError, around: Surroundings): Finding {
  const { text, file, line } = around
  const [from, to] = problem.pos
  const place = (start: number, end: number) => ({ file, from: start, to: Math.min(end, text.length) })
  if (problem.code === 'TAB_AS_INDENT') return fault('tab-indent', place(from, to), {})
  if (problem.code === 'TAG_RESOLVE_FAILED') {
    return fault('tag-refused', place(from, to), { tag: excerpt(text.slice(from, to)) })
  }
  const trap = aboutTheColon(problem, around)
  if (trap) return trap
  if (problem.code === 'MISSING_CHAR' && problem.message.startsWith('Missing closing')) {
    const opening = openQuotation(around.document, from)
    const found = excerpt(lineAround(text, opening).text.slice(opening - lineAround(text, opening).from))
    return fault('not-yaml', place(opening, opening + 1), { found, wanted: wantedFor(problem) })
  }
  const rest = line.text.slice(from - line.from).trim()
  const found = rest === '' ? line.text.trim() : rest
  return fault('not-yaml', place(from, to), { found: excerpt(found), wanted: wantedFor(problem) })
}

/** A colon with no space behind it where a key was meant, or with one in the middle of a text. */
function aboutTheColon(problem: YAMLError, { text, file, line }: Surroundings): Finding | undefined {
  const keyMissing = problem.code === 'MISSING_CHAR' || problem.code === 'MULTILINE_IMPLICIT_KEY'
  if (keyMissing) {
    const indent = /^[\s-]*/.exec(line.text)![0].length
    const together = colonWithoutSpace(line.text.slice(indent))
    if (together) {
      const from = line.from + indent
      const to = from + together.key.length + 1 + together.value.length
      return fault('colon-without-space', { file, from, to }, shortened(together))
    }
  }
  if (problem.code === 'BLOCK_AS_IMPLICIT_KEY' || problem.code === 'BLOCK_IN_FLOW') {
    const value = line.text.slice(problem.pos[0] - line.from)
    if (/[^\s{[,]:\s/.test(value) && !text.slice(problem.pos[0], problem.pos[1]).includes('\n')) {
      const to = problem.code === 'BLOCK_IN_FLOW' ? problem.pos[1] : line.from + line.text.trimEnd().length
      const from = problem.pos[0]
      return fault('colon-in-text', { file, from, to }, { text: excerpt(text.slice(from, to)) })
    }
  }
  return undefined
}

function shortened({ key, value }: { key: string; value: string }) {
  return { key: excerpt(key), value: excerpt(value) }
}

/** Where the quoted text begins that reaches to `end` and is not closed. */
function openQuotation(document: Document.Parsed, end: number): number {
  let opening = end
  visit(document, (_, node) => {
    if (!isScalar(node) || !node.type?.startsWith('QUOTE') || !node.range) return
    if (node.range[0] < end && node.range[1] >= end) opening = node.range[0]
  })
  return opening
}
