import { inflateSync } from 'node:zlib'

/** Sizes of the headers and directory entries of a WOFF file and of the font inside it. */
const woffHeader = 44
const woffEntry = 20
const fontHeader = 12
const fontEntry = 16

/**
 * The TrueType font inside a WOFF file. Both libraries that read the font would unpack it themselves, each once, with an
 * inflate written in JavaScript that takes twenty times as long as Node's.
 *
 * Source: W3C, WOFF File Format 1.0, sections 3 to 5; OpenType, "Table Directory".
 *
 * @throws RangeError when the bytes are no WOFF file; they come with the program
 */
export function unpackWoff(woff: Buffer): Uint8Array {
  if (woff.toString('latin1', 0, 4) !== 'wOFF') throw new RangeError('a font file is no WOFF file')
  const count = woff.readUInt16BE(12)
  const entries = Array.from({ length: count }, (_, i) => readEntry(woff, woffHeader + i * woffEntry))
  const start = fontHeader + count * fontEntry
  const font = Buffer.alloc(start + entries.reduce((sum, { length }) => sum + padded(length), 0))

  woff.copy(font, 0, 4, 8)
  font.writeUInt16BE(count, 4)
  // for binary search over the directory: the largest power of two within the count, and what is beyond it
  const power = Math.floor(Math.log2(count))
  font.writeUInt16BE(fontEntry * 2 ** power, 6)
  font.writeUInt16BE(power, 8)
  font.writeUInt16BE(fontEntry * (count - 2 ** power), 10)

  let at = start
  for (const [i, { tag, offset, packed, length, checksum }] of entries.entries()) {
    const entry = fontHeader + i * fontEntry
    for (const [j, value] of [tag, checksum, at, length].entries()) font.writeUInt32BE(value, entry + 4 * j)
    const bytes = woff.subarray(offset, offset + packed)
    font.set(packed < length ? inflateSync(bytes) : bytes, at)
    at += padded(length)
  }
  return font
}

function readEntry(woff: Buffer, at: number) {
  const [tag, offset, packed, length, checksum] = [0, 4, 8, 12, 16].map(i => woff.readUInt32BE(at + i)) as [
    number,
    number,
    number,
    number,
    number,
  ]
  return { tag, offset, packed, length, checksum }
}

/** Tables begin at multiples of four. */
function padded(length: number): number {
  return Math.ceil(length / 4) * 4
}
