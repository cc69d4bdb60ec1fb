import { writeMm } from '../write-mm.ts'
import { xmlText } from '../xml-text.ts'

/** What an SVG file says of itself. */
export type SvgHead = {
  /** In millimetres. */
  readonly width: number
  readonly height: number
  readonly title: string
  /** BCP 47, such as "en". */
  readonly language: string
}

/**
 * A whole SVG file: one unit is one millimetre, from the upper left corner. Strokes are black, without fill and
 * with round joins, so that the line of a sharp corner does not run on past it.
 */
export function svgDocument(head: SvgHead, content: readonly string[]): string {
  const width = writeMm(head.width)
  const height = writeMm(head.height)
  const language = xmlText(head.language)
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"` +
      ` role="graphics-document document" lang="${language}" xml:lang="${language}"` +
      ' fill="none" stroke="#000" stroke-linejoin="round">',
    `<title>${xmlText(head.title)}</title>`,
    ...content,
    '</svg>',
    '',
  ].join('\n')
}
