/**
 * Where in a scalar as it stands in the file the character at `index` of its value begins. Exact for texts on one
 * line, plain or quoted, with their escapes; in a text of several lines, which YAML folds, the place of its
 * beginning.
 *
 * `raw` is the scalar with its quotation marks.
 */
export function offsetInRaw(raw: string, index: number): number {
  const quote = raw[0]
  if (raw.includes('\n')) return 0
  if (quote === "'") return walk(raw, index, singleQuoted)
  if (quote === '"') return walk(raw, index, doubleQuoted)
  return Math.min(index, raw.length)
}

type Step = (raw: string, at: number) => { readonly raw: number; readonly value: number }

function walk(raw: string, index: number, step: Step): number {
  let at = 1
  for (let value = 0; value < index && at < raw.length - 1; ) {
    const taken = step(raw, at)
    at += taken.raw
    value += taken.value
  }
  return Math.min(at, raw.length)
}

const singleQuoted: Step = (raw, at) => ({ raw: raw.startsWith("''", at) ? 2 : 1, value: 1 })

/** Source: YAML 1.2.2, 5.7 Escaped characters. */
const escapeLengths: Readonly<Record<string, number>> = { x: 4, u: 6, U: 10 }

const doubleQuoted: Step = (raw, at) => {
  if (raw[at] !== '\\') return { raw: 1, value: 1 }
  const kind = raw[at + 1] ?? ''
  const beyondBasicPlane = kind === 'U' && Number.parseInt(raw.slice(at + 2, at + 10), 16) > 0xffff
  return { raw: escapeLengths[kind] ?? 2, value: beyondBasicPlane ? 2 : 1 }
}
