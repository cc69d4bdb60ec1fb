import { type LineRole, lineStyles } from '../../drawing/line-role.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Page } from '../../drawing/page.ts'
import { compose, type Matrix } from '../../geometry/shape/matrix.ts'
import { byLayer } from '../by-layer.ts'
import { writeFactor, writeMm } from '../write-mm.ts'
import type { Lettering } from './lettering.ts'
import { traceContour } from './path-operators.ts'

/** Points in a millimetre. */
export const pointsPerMm = 72 / 25.4

/**
 * The operators of a page. A first matrix leads from the millimetres of the page, y up, through its correction
 * to the library's own coordinates, which are points counted downward from `top`; after it all is millimetres.
 */
export function pageContent(page: Page, top: number, lettering: Lettering): string {
  const out: string[] = []
  const toPaper: Matrix = { a: pointsPerMm, b: 0, c: 0, d: -pointsPerMm, e: 0, f: top }
  // joins are round, so that the line of a sharp corner does not run on past it
  out.push('q', matrixOperator(compose(page.correction, toPaper)), '1 j')
  for (const { drawing, matrix } of page.placed) {
    out.push('q', matrixOperator(matrix))
    writeMarks(drawing.marks, lettering, out)
    out.push('Q')
  }
  writeMarks(page.furniture, lettering, out)
  out.push('Q')
  return out.join('\n')
}

function writeMarks(marks: readonly Mark[], lettering: Lettering, out: string[]): void {
  let current: LineRole | undefined
  for (const layer of byLayer(marks)) {
    for (const mark of layer.marks) {
      switch (mark.kind) {
        case 'path':
          if (mark.role !== current) {
            const { width, dashes } = lineStyles[mark.role]
            out.push(`${writeMm(width)} w`, `[${dashes.map(writeMm).join(' ')}] 0 d`)
            current = mark.role
          }
          for (const contour of mark.contours) traceContour(contour, out)
          if (mark.contours.some(contour => contour.segments.length > 0)) out.push('S')
          break
        case 'fill':
          for (const { outer, holes } of mark.regions) {
            if (outer.segments.length === 0) continue
            traceContour(outer, out)
            for (const hole of holes) traceContour(hole, out)
            // even-odd: which contour is a hole does not hang on its direction
            out.push('f*')
          }
          break
        case 'text':
          lettering.text(mark, out)
          break
      }
    }
  }
}

function matrixOperator(m: Matrix): string {
  return `${[m.a, m.b, m.c, m.d, m.e, m.f].map(writeFactor).join(' ')} cm`
}
