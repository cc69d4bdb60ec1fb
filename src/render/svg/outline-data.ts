import { apply, type Matrix } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { writeDecimal } from '../../number/write-decimal.ts'
import type { Laid } from '../../text/lay-out.ts'
import type { Corner } from './path-data.ts'

/** Letters are placed to the micrometre, a fifth of `printable`; they make up most of a file. */
const letterPlaces = 3

/** A laid line as the outlines of its letters; `matrix` leads from the line to where it stands. */
export function lettersData(laid: Laid, matrix: Matrix, corner: Corner): string {
  const out: string[] = []
  for (const { glyph, x } of laid.glyphs) {
    const pair = (p: Point): string => {
      const q = apply(matrix, { x: x + laid.size * p.x, y: laid.size * p.y })
      return `${writeDecimal(q.x - corner.left, letterPlaces)} ${writeDecimal(corner.top - q.y, letterPlaces)}`
    }
    for (const step of glyph.outline) {
      switch (step.kind) {
        case 'move':
          out.push(`M${pair(step.to)}`)
          break
        case 'line':
          out.push(`L${pair(step.to)}`)
          break
        case 'quadratic':
          out.push(`Q${pair(step.control)} ${pair(step.to)}`)
          break
        case 'cubic':
          out.push(`C${pair(step.control1)} ${pair(step.control2)} ${pair(step.to)}`)
          break
        case 'close':
          out.push('Z')
          break
      }
    }
  }
  return out.join('')
}
