import { Composer, type CST, type Document, Lexer, Parser } from 'yaml'
import type { Finding } from '../../finding/finding.ts'
import { fault, limitPassed } from '../fault.ts'
import { maxFindings, maxNesting, maxTokens } from '../limits.ts'
import { syntaxFaults } from './syntax-faults.ts'

export type ParsedYaml = { readonly document?: Document.Parsed; readonly findings: readonly Finding[] }

/** A text as one YAML 1.2 document with the place of every node, and what is not YAML in it. An empty text is none. */
export function parseYaml(text: string, file: string): ParsedYaml {
  const composed = compose(text, file)
  if ('passed' in composed) return { findings: [composed.passed] }
  const [document, second] = composed.documents
  if (!document) return { findings: [] }
  const findings: Finding[] = [...syntaxFaults(document, text, file)]
  const { yaml } = document.directives
  if (yaml.explicit && yaml.version !== '1.2') {
    findings.push(fault('yaml-version', { file, from: 0, to: 0 }, { found: yaml.version }))
  }
  if (second) {
    const from = second.range[0]
    findings.push(fault('second-document', { file, from, to: from }, {}))
  }
  return { document, findings }
}

type Composed = { readonly documents: readonly Document.Parsed[] } | { readonly passed: Finding }

/**
 * The documents of a text. The tokens are counted and their nesting is watched as they come, before the composer,
 * which recurses, sees them; a second document or a heap of errors is enough to stop.
 */
function compose(text: string, file: string): Composed {
  const parser = new Parser()
  const composer = new Composer({
    version: '1.2',
    schema: 'core',
    merge: false,
    uniqueKeys: false,
    resolveKnownTags: false,
    logLevel: 'silent',
  })
  const documents: Document.Parsed[] = []
  let tokens = 0
  let troubles = 0
  let afterOpening = false
  const hand = (made: Iterable<CST.Token>): void => {
    for (const token of made) {
      if (token.type === 'error' || token.type === 'directive') troubles += 1
      documents.push(...composer.next(token))
    }
  }
  const passed = (of: string, measured: number, limit: number): Composed => {
    const here = { file, from: parser.offset, to: Math.min(parser.offset + 1, text.length) }
    return { passed: limitPassed(here, of, measured, limit) }
  }
  for (const lexeme of new Lexer().lex(text)) {
    tokens += 1
    if (tokens > maxTokens) return passed('words and marks of YAML', tokens, maxTokens)
    if (afterOpening && lexeme === ',') troubles += 1
    if (!/^[\s#]/.test(lexeme)) afterOpening = /^[,[{]$/.test(lexeme)
    hand(parser.next(lexeme))
    const nesting = parser.stack.length
    if (nesting > maxNesting) return passed('levels of nesting', nesting, maxNesting)
    if (documents.length > 1 || troubles > maxFindings) break
  }
  if (documents.length <= 1) {
    hand(parser.end())
    documents.push(...composer.end(true, text.length))
  }
  return { documents }
}
