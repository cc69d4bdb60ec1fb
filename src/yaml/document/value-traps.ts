import type { Finding } from '../../finding/finding.ts'
import { lineAround } from '../../finding/locate.ts'
import type { Source } from '../../finding/source.ts'
import { excerpt } from '../../finding/visible.ts'
import { fault } from '../fault.ts'

/** A key with the place it stands at. */
export type Key = { readonly text: string; readonly source: Source }

/**
 * Why nothing is left of a value, where YAML's rules surprise: `diameter: #4` is a comment, and a `~` by itself
 * is YAML's word for nothing. `written` is the value as it stands in the file.
 */
export function emptyValueTrap(key: Key, written: string, at: Source, text: string): Finding | undefined {
  if (written === '~') return fault('bare-tilde', at, { key: excerpt(key.text) })
  if (written !== '') return undefined
  const line = lineAround(text, key.source.to)
  const behind = line.text.slice(key.source.to - line.from)
  const comment = /^\s*:\s+(#\S.*)$/.exec(behind)?.[1]
  if (comment === undefined) return undefined
  const from = line.from + line.text.length - comment.length
  const source = { file: at.file, from, to: from + comment.trimEnd().length }
  return fault('comment-eats-value', source, { key: excerpt(key.text), comment: excerpt(comment.trimEnd()) })
}

/**
 * A number behind a `#` behind a value, `label: Bolster #4`: most likely meant to belong to it, and lost. A
 * comment that begins with a space or a letter is left alone.
 */
export function commentInText(value: Source, text: string): Finding | undefined {
  const line = lineAround(text, value.to)
  const behind = /^(\s+)(#\d\S*)/.exec(line.text.slice(value.to - line.from))
  if (!behind) return undefined
  const from = value.to + behind[1]!.length
  const comment = behind[2]!
  const finding = fault(
    'comment-in-text',
    { file: value.file, from, to: from + comment.length },
    { value: excerpt(text.slice(value.from, value.to)), comment: excerpt(comment) },
  )
  return { ...finding, severity: 'warning' }
}
