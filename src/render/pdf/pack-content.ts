import type { PdfDocument } from './document.ts'

/** Packs bytes as streams of a PDF are packed (zlib, RFC 1950), while the program goes on with other work. */
export type Pack = (bytes: Uint8Array) => Promise<Uint8Array>

/**
 * Begins to pack the content of the document's last page. What it gives puts that content into the file when it is
 * packed; nothing that is to stand behind it there may be written before.
 */
export function packContent(document: PdfDocument, pack: Pack): () => Promise<void> {
  const { content } = document.page
  const end = content.end.bind(content)
  let isPageOver = false
  // the library ends a page's content with the page, and would pack it there and wait
  content.end = () => {
    isPageOver = true
  }
  const packed = pack(joined(content.buffer))
  return async () => {
    content.buffer = [await packed]
    content.compress = false
    content.end = end
    if (isPageOver) end()
  }
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole
}
