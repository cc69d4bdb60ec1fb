import { Composer, type Document, Lexer, Parser } from 'yaml'
import type { Finding } from '../../finding/finding.ts'
import { fault, limitPassed } from '../fault.ts'
import { maxNesting, maxTokens } from '../limits.ts'
import { syntaxFaults } from './syntax-faults.ts'

export type ParsedYaml = { readonly document?: Document.Parsed; readonly findings: readonly Finding[] }

/**
 * A text as one YAML 1.2 document with the place of every node. The tokens are counted and their nesting is
 * watched as they come, before the composer, which recurses, sees them.
 */
export function parseYaml(text: string, file: string): ParsedYaml {
  const parser = new Parser()
  const composer = new Composer({
    version: '1.2',
    schema: 'core',
    merge: false,
    uniqueKeys: false,
    logLevel: 'silent',
  })
  const documents: Document.Parsed[] = []
  let tokens = 0
  const here = () => ({ file, from: parser.offset, to: Math.min(parser.offset + 1, text.length) })
  for (const lexeme of new Lexer().lex(text)) {
    tokens += 1
    if (tokens > maxTokens) {
      return { findings: [limitPassed(here(), 'words and marks of YAML', tokens, maxTokens)] }
    }
    for (const token of parser.next(lexeme)) documents.push(...composer.next(token))
    if (parser.stack.length > maxNesting) {
      return { findings: [limitPassed(here(), 'levels of nesting', parser.stack.length, maxNesting)] }
    }
    if (documents.length > 1) break
  }
  if (documents.length <= 1) {
    for (const token of parser.end()) documents.push(...composer.next(token))
    documents.push(...composer.end(true, text.length))
  }
  const [document, second] = documents
  if (!document) return { findings: [] }
  const findings: Finding[] = [...syntaxFaults(document, text, file)]
  const version = document.directives.yaml
  if (version.explicit && version.version !== '1.2') {
    findings.push(fault('yaml-version', { file, from: 0, to: 0 }, { found: version.version }))
  }
  if (second) {
    const from = second.range[0]
    findings.push(fault('second-document', { file, from, to: from }, {}))
  }
  return { document, findings }
}
