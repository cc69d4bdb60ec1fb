import { type LineRole, type LineStyle, lineStyles } from '../../drawing/line-role.ts'

/** How lines are to be seen: as on paper, or as fine as machines want a line that they follow. */
export type Lines = 'printed' | 'hairline'

/** What is wanted of an SVG file. */
export type SvgOptions = {
  /** Hairlines keep their dashes: a fold is not to be taken for a cut. */
  readonly lines?: Lines
  /** Whether words, letters and numbers are in it. */
  readonly text?: boolean
}

/** A thousandth of an inch: what machines take for "follow this line" (common practice, no source). */
const hairline = 0.0254

export function styleOf(role: LineRole, lines: Lines): LineStyle {
  const style = lineStyles[role]
  return lines === 'printed' ? style : { ...style, width: hairline }
}
