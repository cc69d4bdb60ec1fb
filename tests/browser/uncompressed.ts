import { inflateSync } from 'node:zlib'

/**
 * A PDF file with its streams written out, to compare what two programs that compress differently say: every object
 * with its dictionary and content, without the lengths and places that hang on the compression.
 */
export function uncompressed(pdf: Uint8Array): readonly string[] {
  const file = Buffer.from(pdf).toString('latin1')
  const objects: string[] = []
  const start = /(\d+) 0 obj\n/g
  for (let found = start.exec(file); found !== null; found = start.exec(file)) {
    const end = file.indexOf('endobj', start.lastIndex)
    const stream = file.indexOf('\nstream\n', start.lastIndex)
    if (stream < 0 || stream > end) {
      objects.push(file.slice(found.index, end))
      continue
    }
    const dictionary = file.slice(found.index, stream)
    const length = Number(/\/Length (\d+)/.exec(dictionary)![1])
    const from = stream + '\nstream\n'.length
    const bytes = Buffer.from(pdf.subarray(from, from + length))
    const content = dictionary.includes('/FlateDecode') ? inflateSync(bytes) : bytes
    objects.push(`${dictionary.replace(/\/Length \d+/, '')}\n${content.toString('latin1')}`)
    start.lastIndex = from + length
  }
  const trailer = file.slice(file.lastIndexOf('trailer'), file.lastIndexOf('startxref'))
  return [...objects, trailer]
}
