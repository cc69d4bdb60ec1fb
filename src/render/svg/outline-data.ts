import { apply, type Matrix } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { writeDecimal } from '../../number/write-decimal.ts'
import type { Laid } from '../../text/lay-out.ts'
import type { Corner } from './path-data.ts'

/** Letters are placed to the micrometre, a fifth of `printable`; they make up most of a file. */
const letterPlaces = 3
const perMm = 10 ** letterPlaces

/**
 * A laid line as the outlines of its letters; `matrix` leads from the line to where it stands. Every stroke is
 * written from where the pen is, in whole micrometres: a quarter shorter, and nothing adds up.
 */
export function lettersData(laid: Laid, matrix: Matrix, corner: Corner): string {
  const out: string[] = []
  for (const { glyph, x } of laid.glyphs) {
    const place = (p: Point): Point => {
      const q = apply(matrix, { x: x + laid.size * p.x, y: laid.size * p.y })
      return { x: Math.round((q.x - corner.left) * perMm), y: Math.round((corner.top - q.y) * perMm) }
    }
    let pen: Point = { x: 0, y: 0 }
    const move = (letter: string, ...points: readonly Point[]): void => {
      const placed = points.map(place)
      const from = letter === 'M' ? { x: 0, y: 0 } : pen
      out.push(letter + placed.map(p => pair(p.x - from.x, p.y - from.y)).join(' '))
      pen = placed.at(-1)!
    }
    for (const step of glyph.outline) {
      switch (step.kind) {
        case 'move':
          move('M', step.to)
          break
        case 'line':
          move('l', step.to)
          break
        case 'quadratic':
          move('q', step.control, step.to)
          break
        case 'cubic':
          move('c', step.control1, step.control2, step.to)
          break
        case 'close':
          out.push('z')
          break
      }
    }
  }
  return out.join('')
}

function pair(x: number, y: number): string {
  return `${writeDecimal(x / perMm, letterPlaces)} ${writeDecimal(y / perMm, letterPlaces)}`
}
