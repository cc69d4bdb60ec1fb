import type { Text } from '../../drawing/mark.ts'
import { writeDecimal } from '../../number/write-decimal.ts'
import type { Font } from '../../text/font.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Glyph } from '../../text/glyph.ts'
import { glyphsOf, measureLine } from '../../text/lay-out.ts'
import { textMatrix } from '../../text/place.ts'
import { writeFactor, writeMm } from '../write-mm.ts'
import type { ByteSink } from './byte-sink.ts'
import type { EmbeddedFont, PdfDocument, Reference } from './document.ts'
import { drawnFont } from './drawn-font.ts'

/** What writes lines of text into a document's pages and, at its end, the fonts. */
export type Lettering = {
  readonly text: (mark: Text, out: ByteSink) => void
  readonly finish: () => void
}

/**
 * A glyph goes into the file letter by letter, so that no kerning or joined letter moves it; widths of the
 * embedded fonts and of the drawn one carry the line on, as `measureLine` has it.
 */
export function lettering(document: PdfDocument, fonts: Fonts): Lettering {
  const drawn = drawnFont(document)
  const embedded = new Map<Uint8Array, EmbeddedFont>()
  const embed = (file: Uint8Array): EmbeddedFont => {
    const known = embedded.get(file)
    if (known !== undefined) return known
    document.font(file)
    const made = document._font
    embedded.set(file, made)
    return made
  }
  const letters = new Map<Glyph, { font: string; reference: Reference; code: string }>()
  const find = (font: Font, glyph: Glyph): { font: string; reference: Reference; code: string } => {
    if (glyph.file === undefined) return drawn.code(glyph)
    const known = letters.get(glyph)
    if (known !== undefined) return known
    const face = embed(font.files[glyph.file.index]!)
    const [codes] = face.encode(String.fromCodePoint(glyph.file.codePoint))
    const made = { font: face.id, reference: face.ref(), code: codes.join('') }
    letters.set(glyph, made)
    return made
  }

  return {
    text: (mark, out) => {
      const font = fonts[mark.weight]
      const glyphs = glyphsOf(font, mark.words)
      if (glyphs.length === 0) return
      const laid = measureLine(font, mark.words, mark.height)
      const m = textMatrix(laid, mark)
      const factors = [m.a, m.b, m.c, m.d].map(writeFactor).join(' ')
      out.addLine('BT')
      out.addLine(`${factors} ${writeMm(m.e)} ${writeMm(m.f)} Tm`)
      let current = ''
      let codes = ''
      const show = (): void => {
        if (codes !== '') out.addLine(`<${codes}> Tj`)
        codes = ''
      }
      for (const glyph of glyphs) {
        const { font: name, reference, code } = find(font, glyph)
        if (name !== current) {
          show()
          document.page.fonts[name] = reference
          out.addLine(`/${name} ${writeDecimal(laid.size, sizePlaces)} Tf`)
          current = name
        }
        codes += code
      }
      show()
      out.addLine('ET')
    },
    finish: drawn.finish,
  }
}

/** The size of letters is rounded more finely than a place: every letter of the line moves by it. */
const sizePlaces = 7
