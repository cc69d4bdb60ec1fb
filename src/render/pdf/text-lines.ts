import type { Text } from '../../drawing/mark.ts'

/**
 * Marks that are read as one, from left to right: texts that follow one another on the same base line, such as a
 * letter of the key and the words beside it.
 */
export function textLines(texts: readonly Text[]): readonly (readonly Text[])[] {
  const lines: Text[][] = []
  for (const text of texts) {
    const last = lines.at(-1)
    if (last !== undefined && onOneLine(last.at(-1)!, text)) last.push(text)
    else lines.push([text])
  }
  return lines.map(line => line.sort((a, b) => a.at.x - b.at.x))
}

function onOneLine(before: Text, after: Text): boolean {
  return before.angle === 0 && after.angle === 0 && before.at.y === after.at.y
}
