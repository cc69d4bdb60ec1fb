import type { Finding } from '../../finding/finding.ts'
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
  const comment = matchAt(/\s*:[ \t]+(#\S[^\r\n]*)/y, text, key.source.to)
  if (!comment) return undefined
  const lost = comment.text.trimEnd()
  const source = { file: at.file, from: comment.from, to: comment.from + lost.length }
  return fault('comment-eats-value', source, { key: excerpt(key.text), comment: excerpt(lost) })
}

/**
 * A number behind a `#` behind a value, `label: Bolster #4`: most likely meant to belong to it, and lost. A
 * comment that begins with a space or a letter is left alone.
 */
export function commentInText(value: Source, text: string): Finding | undefined {
  const comment = matchAt(/[ \t]+(#\d\S*)/y, text, value.to)
  if (!comment) return undefined
  const finding = fault(
    'comment-in-text',
    { file: value.file, from: comment.from, to: comment.from + comment.text.length },
    { value: excerpt(text.slice(value.from, value.to)), comment: excerpt(comment.text) },
  )
  return { ...finding, severity: 'warning' }
}

/** What a sticky pattern catches in its brackets, which stand at its end, and where that begins. */
function matchAt(pattern: RegExp, text: string, at: number): { text: string; from: number } | undefined {
  pattern.lastIndex = at
  const [all, caught] = pattern.exec(text) ?? []
  return all === undefined || caught === undefined
    ? undefined
    : { text: caught, from: at + all.length - caught.length }
}
