/** Wide enough to read well, and narrower than any terminal. */
const columns = 78

/** A text in lines that each begin with `indent`, broken at blanks. */
export function wrapWords(text: string, indent: string): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && indent.length + line.length + 1 + word.length > columns) {
      lines.push(indent + line)
      line = word
    } else {
      line = line === '' ? word : `${line} ${word}`
    }
  }
  return [...lines, indent + line]
}
