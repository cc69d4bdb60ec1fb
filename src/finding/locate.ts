/** Line and column, counted from 1. */
export type Location = { readonly line: number; readonly column: number }

/**
 * Where an offset stands in a text. Lines end with LF or CR LF, as YAML files do. Columns count characters
 * (code points), so one emoji is one column and a tab is one; a byte order mark counts for none. An offset
 * beyond the text stands behind its last character.
 */
export function locate(text: string, offset: number): Location {
  const at = Math.max(0, Math.min(offset, text.length))
  let line = 1
  let start = 0
  for (let end = text.indexOf('\n'); end >= 0 && end < at; end = text.indexOf('\n', start)) {
    line += 1
    start = end + 1
  }
  return { line, column: charactersBetween(text, start, at) + 1 }
}

/** The line an offset stands in, without its end, and the offset at which it begins. */
export function lineAround(text: string, offset: number): { readonly text: string; readonly from: number } {
  const at = Math.max(0, Math.min(offset, text.length))
  const from = at === 0 ? 0 : text.lastIndexOf('\n', at - 1) + 1
  const end = text.indexOf('\n', at)
  const line = text.slice(from, end < 0 ? text.length : end)
  return { text: line.endsWith('\r') ? line.slice(0, -1) : line, from }
}

const byteOrderMark = 0xfeff

function charactersBetween(text: string, from: number, to: number): number {
  let count = 0
  let at = from === 0 && text.charCodeAt(0) === byteOrderMark ? 1 : from
  for (; at < to; at += text.codePointAt(at)! > 0xffff ? 2 : 1) count += 1
  return count
}
