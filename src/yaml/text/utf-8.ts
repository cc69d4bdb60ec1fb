const replacement = '\uFFFD'
const replacementBytes = [0xef, 0xbf, 0xbd]

/** Bytes as text, a byte order mark kept, every wrong byte as U+FFFD. */
export function lenientText(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)
}

/** The first place where `text`, made of `bytes` by `lenientText`, stands for bytes that are not UTF-8. */
export function firstInvalid(
  bytes: Uint8Array,
  text: string,
): { readonly at: number; readonly byte: number } | undefined {
  const encoder = new TextEncoder()
  let counted = 0
  let position = 0
  for (let at = text.indexOf(replacement); at >= 0; at = text.indexOf(replacement, at + 1)) {
    position += encoder.encode(text.slice(counted, at)).length
    counted = at
    if (replacementBytes.some((byte, i) => bytes[position + i] !== byte))
      return { at, byte: bytes[position]! }
  }
  return undefined
}
