import { type Document, isCollection, isScalar, visit } from 'yaml'

/** What was opened and never closed: a quotation, or a `{ }` or `[ ]`. */
export type Unclosed = { readonly kind: 'quotation' | 'bracket'; readonly from: number }

/** All of a document, in the order of the text. */
export function unclosedIn(document: Document.Parsed, text: string): readonly Unclosed[] {
  const found: Unclosed[] = []
  visit(document, (_, node) => {
    const range = isScalar(node) || isCollection(node) ? node.range : undefined
    if (!range) return
    const [from, to] = range
    const last = to - from > 1 ? text.charAt(to - 1) : ''
    if (isScalar(node)) {
      if (node.type?.startsWith('QUOTE') && last !== text.charAt(from))
        found.push({ kind: 'quotation', from })
    } else if (isCollection(node) && node.flow && last !== closing[text.charAt(from)]) {
      found.push({ kind: 'bracket', from })
    }
  })
  return found
}

const closing: Readonly<Record<string, string>> = { '{': '}', '[': ']' }
