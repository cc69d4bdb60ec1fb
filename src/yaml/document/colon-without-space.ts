/** `bottom:5/8`, `make:2`: a key, a colon and a value run together, which YAML reads as one text. */
const runTogether = /^([A-Za-z][\w-]*):(\S+)/

/** The key and the value of a text that begins with a key, a colon and no space. */
export function colonWithoutSpace(
  text: string,
): { readonly key: string; readonly value: string } | undefined {
  const [, key, value] = runTogether.exec(text) ?? []
  return key !== undefined && value !== undefined ? { key, value } : undefined
}
