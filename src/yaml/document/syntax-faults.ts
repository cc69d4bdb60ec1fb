import type { Document, YAMLError } from 'yaml'
import type { Finding } from '../../finding/finding.ts'
import { lineAround } from '../../finding/locate.ts'
import { excerpt } from '../../finding/visible.ts'
import { fault } from '../fault.ts'
import { maxFindings } from '../limits.ts'
import { colonWithoutSpace } from './colon-without-space.ts'
import { wantedFor } from './syntax-wording.ts'
import { type Unclosed, unclosedIn } from './unclosed.ts'

/**
 * What is not YAML in a document, in the maker's words. One fault upsets much of what follows it, so there is at
 * most one a line, and what has no name of its own is said once for each thing that was wanted.
 */
export function syntaxFaults(document: Document.Parsed, text: string, file: string): readonly Finding[] {
  const problems = [
    ...document.errors,
    ...document.warnings.filter(warning => warning.code === 'BAD_DIRECTIVE'),
  ].sort((a, b) => a.pos[0] - b.pos[0])
  const unclosed = problems.length > 0 ? unclosedIn(document, text) : []
  const found: Finding[] = []
  const said = new Set<string>()
  let endOfLine = -1
  for (const problem of problems) {
    if (found.length > maxFindings) break
    if (problem.pos[0] <= endOfLine) continue
    const line = lineAround(text, problem.pos[0])
    endOfLine = line.from + line.text.length
    const finding = syntaxFault(problem, { unclosed, text, file, line })
    if (finding.rule === 'not-yaml') {
      if (said.has(finding.facts.wanted)) continue
      said.add(finding.facts.wanted)
    }
    found.push(finding)
  }
  return found
}

type Surroundings = {
  readonly unclosed: readonly Unclosed[]
  readonly text: string
  readonly file: string
  /** The line that the problem begins in. */
  readonly line: { readonly text: string; readonly from: number }
}

function syntaxFault(problem: YAMLError, around: Surroundings): Finding {
  const { text, file, line } = around
  const [from, to] = problem.pos
  if (problem.code === 'TAB_AS_INDENT') return fault('tab-indent', { file, from, to }, {})
  if (problem.code === 'TAG_RESOLVE_FAILED') {
    return fault('tag-refused', { file, from, to }, { tag: excerpt(text.slice(from, to)) })
  }
  const trap =
    markWithoutSpace(problem, around) ?? colonInText(problem, around) ?? neverClosed(problem, around)
  if (trap) return trap
  const rest = line.text.slice(from - line.from).trimStart()
  const found = rest === '' || problem.code === 'UNEXPECTED_TOKEN' ? line.text.trim() : rest.trimEnd()
  const start = rest === '' ? from : line.from + line.text.length - rest.length
  const source = { file, from: start, to: Math.min(Math.max(to, start + 1), text.length) }
  const before = line.text.slice(0, from - line.from)
  return fault('not-yaml', source, { found: excerpt(found), wanted: wantedFor(problem, before) })
}

/** `make:2` or `-hole: a`: the mark and what follows it ran together. */
function markWithoutSpace({ code }: YAMLError, { file, line }: Surroundings): Finding | undefined {
  if (code !== 'MISSING_CHAR' && code !== 'MULTILINE_IMPLICIT_KEY' && code !== 'BLOCK_AS_IMPLICIT_KEY') {
    return undefined
  }
  const dash = /^(\s*)-[^\s-]/.exec(line.text)
  if (dash) {
    const from = line.from + dash[1]!.length
    const facts = { found: excerpt(line.text.trim()), wanted: 'a space behind the -' }
    return fault('not-yaml', { file, from, to: from + 1 }, facts)
  }
  const indent = /^[\s-]*/.exec(line.text)![0].length
  const together = code === 'BLOCK_AS_IMPLICIT_KEY' ? undefined : colonWithoutSpace(line.text.slice(indent))
  if (!together) return undefined
  const { key, value } = together
  const from = line.from + indent
  const source = { file, from, to: from + key.length + 1 + value.length }
  return fault('colon-without-space', source, { key: excerpt(key), value: excerpt(value) })
}

/** `title: Car 1: 16`: a colon and a space in the middle of a text. */
function colonInText({ code, pos }: YAMLError, { text, file, line }: Surroundings): Finding | undefined {
  if (code !== 'BLOCK_AS_IMPLICIT_KEY' && code !== 'BLOCK_IN_FLOW') return undefined
  const [from, end] = pos
  const value = line.text.slice(from - line.from)
  if (line.text.slice(0, from - line.from).trim() === '') return undefined
  if (!/[^\s{[,]:\s/.test(value) || text.slice(from, end).includes('\n')) return undefined
  const to = code === 'BLOCK_IN_FLOW' ? end : line.from + line.text.trimEnd().length
  return fault('colon-in-text', { file, from, to }, { text: excerpt(text.slice(from, to)) })
}

/**
 * A quotation or bracket without its end, shown where it begins. A bracket can lose its end to a comment:
 * `{ hole: a, diameter: #4 }`.
 */
function neverClosed(problem: YAMLError, { unclosed, text, file }: Surroundings): Finding | undefined {
  const kind = problem.message.startsWith('Missing closing')
    ? 'quotation'
    : problem.message.includes('end with a')
      ? 'bracket'
      : undefined
  const opening = unclosed.findLast(open => open.kind === kind && open.from < problem.pos[0])
  if (!opening) return undefined
  const { from } = opening
  const line = lineAround(text, from)
  const rest = line.text.slice(from - line.from).trimEnd()
  const comment = kind === 'bracket' ? /([\w-]+):\s+(#\S+)/.exec(rest) : undefined
  if (comment) {
    const [all, key, lost] = comment as unknown as [string, string, string]
    const start = from + comment.index + all.length - lost.length
    const source = { file, from: start, to: start + lost.length }
    return fault('comment-eats-value', source, { key: excerpt(key), comment: excerpt(lost) })
  }
  const facts = { found: excerpt(rest), wanted: wantedFor(problem, '') }
  return fault('not-yaml', { file, from, to: from + 1 }, facts)
}
