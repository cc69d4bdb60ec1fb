import type { Finding } from '../finding/finding.ts'
import { buildTree } from './document/build-tree.ts'
import { parseYaml } from './document/parse-yaml.ts'
import type { TreeNode } from './document/tree.ts'
import { decode } from './text/decode.ts'

/**
 * A file as a tree, in bounded time and memory. `text` is the text in which all offsets count; it is empty where
 * the file was too large to be looked at. Without a root either nothing stands in the file, or the findings say
 * what is wrong.
 */
export type ReadDocument = {
  readonly text: string
  readonly root?: TreeNode
  readonly findings: readonly Finding[]
}

export function readDocument(input: string | Uint8Array, file: string): ReadDocument {
  const { text, findings } = decode(input, file)
  if (findings.length > 0) return { text, findings }
  const { document, findings: syntax } = parseYaml(text, file)
  if (syntax.length > 0 || !document) return { text, findings: syntax }
  return { text, ...buildTree(document, text, file) }
}
