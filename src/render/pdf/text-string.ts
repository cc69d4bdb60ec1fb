/** Text as the library writes it into an object of the file; a bare string would become one of the format's names. */
export function textString(text: string): unknown {
  return Object(text)
}
