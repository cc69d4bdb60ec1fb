import { writeDecimal } from '../../number/write-decimal.ts'
import type { Glyph } from '../../text/glyph.ts'
import type { PdfDocument, Reference } from './document.ts'
import { outlineOperators } from './outline-operators.ts'

/** Glyph space of the font: a thousandth of an em, as in the embedded ones. */
const unitsPerEm = 1000

/**
 * Code 0 is a blank named "m". Nothing uses it: readers guess how large the letters of a Type 3 font are from
 * the width of its m, take it to be 0.6 of an em (poppler's source does), and sort words into lines by that.
 */
const guessedWidth = 600

/** Codes are one byte. */
const firstCode = 1
const lastCode = 255

/**
 * Glyphs of our own drawing as a font of the file (Type 3), so that a stacked fraction or a sign is text like
 * any other: selected, searched and copied as what it reads.
 */
export type DrawnFont = {
  /** The name of the font that has the glyph and its code there, two hexadecimal digits; adds what is new. */
  readonly code: (glyph: Glyph) => {
    readonly font: string
    readonly reference: Reference
    readonly code: string
  }
  /** Writes the fonts; after the last page, before the document ends. */
  readonly finish: () => void
}

export function drawnFont(document: PdfDocument): DrawnFont {
  const full: { reference: Reference; glyphs: Glyph[] }[] = []
  const known = new Map<Glyph, { font: string; reference: Reference; code: string }>()

  return {
    code: glyph => {
      const ready = known.get(glyph)
      if (ready !== undefined) return ready
      let open = full.at(-1)
      if (open === undefined || open.glyphs.length > lastCode - firstCode) {
        open = { reference: document.ref(), glyphs: [] }
        full.push(open)
      }
      const made = {
        font: `D${full.length}`,
        reference: open.reference,
        code: hex(firstCode + open.glyphs.length, 2),
      }
      open.glyphs.push(glyph)
      known.set(glyph, made)
      return made
    },
    finish: () => {
      for (const { reference, glyphs } of full) {
        Object.assign(reference.data, fontDictionary(document, glyphs))
        reference.end()
      }
    },
  }
}

function fontDictionary(document: PdfDocument, glyphs: readonly Glyph[]): Record<string, unknown> {
  const name = (i: number): string => `g${firstCode + i}`
  const stream = (content: string): Reference => {
    const reference = document.ref()
    reference.end(content)
    return reference
  }
  const edge = (side: 'left' | 'bottom' | 'right' | 'top', most: (...values: number[]) => number): number =>
    unitsPerEm * most(0, ...glyphs.map(g => g.ink?.[side] ?? 0))
  return {
    Type: 'Font',
    Subtype: 'Type3',
    Name: 'Drawn',
    FontBBox: [
      edge('left', Math.min),
      edge('bottom', Math.min),
      edge('right', Math.max),
      edge('top', Math.max),
    ],
    FontMatrix: [1 / unitsPerEm, 0, 0, 1 / unitsPerEm, 0, 0],
    CharProcs: {
      m: stream(`${guessedWidth} 0 0 0 0 0 d1`),
      ...Object.fromEntries(glyphs.map((g, i) => [name(i), stream(glyphProcedure(g))])),
    },
    Encoding: { Type: 'Encoding', Differences: [0, 'm', ...glyphs.map((_, i) => name(i))] },
    FirstChar: 0,
    LastChar: glyphs.length,
    Widths: [guessedWidth, ...glyphs.map(g => unitsPerEm * g.advance)],
    Resources: {},
    ToUnicode: stream(toUnicode(glyphs)),
  }
}

/** `d1` says the width and the box, and that the glyph takes the colour of the text. */
function glyphProcedure(glyph: Glyph): string {
  const { left, bottom, right, top } = glyph.ink ?? { left: 0, bottom: 0, right: 0, top: 0 }
  const numbers = [glyph.advance, 0, left, bottom, right, top].map(v => writeDecimal(unitsPerEm * v, 3))
  return [`${numbers.join(' ')} d1`, ...outlineOperators(glyph.outline, unitsPerEm)].join('\n')
}

function toUnicode(glyphs: readonly Glyph[]): string {
  const lines = glyphs.map((g, i) => `<${hex(firstCode + i, 2)}> <${utf16(g.reads)}>`)
  // a block may hold a hundred
  const blocks: string[] = []
  for (let i = 0; i < lines.length; i += 100) {
    const block = lines.slice(i, i + 100)
    blocks.push(`${block.length} beginbfchar`, ...block, 'endbfchar')
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<00> <ff>',
    'endcodespacerange',
    ...blocks,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n')
}

function utf16(text: string): string {
  return Array.from({ length: text.length }, (_, i) => hex(text.charCodeAt(i), 4)).join('')
}

function hex(value: number, digits: number): string {
  return value.toString(16).padStart(digits, '0')
}
