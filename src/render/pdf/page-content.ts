import { type LineRole, lineStyles } from '../../drawing/line-role.ts'
import type { Fill, Mark, Path } from '../../drawing/mark.ts'
import type { Page, Placed } from '../../drawing/page.ts'
import { scaleBounds, transformBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { compose, type Matrix } from '../../geometry/shape/matrix.ts'
import { byLayer } from '../by-layer.ts'
import { writeFactor, writeMm } from '../write-mm.ts'
import type { ByteSink } from './byte-sink.ts'
import type { Layers } from './layers.ts'
import type { Lettering } from './lettering.ts'
import { traceContour } from './path-operators.ts'
import type { PageTags, PointBox } from './tags.ts'
import { textLines } from './text-lines.ts'

/** Points in a millimetre. */
export const pointsPerMm = 72 / 25.4

/** What a document keeps of what its pages show. */
export type Writers = {
  readonly lettering: Lettering
  readonly layers: Layers
  /** Room for the operators of a page, used for one after the other. */
  readonly operators: ByteSink
}

/**
 * The operators of a page. A first matrix leads from the millimetres of the page, y up, through its correction
 * to the library's own coordinates, which are points counted downward from `top`; after it all is millimetres.
 */
export function pageContent(page: Page, top: number, writers: Writers, tags: PageTags): Uint8Array {
  const out = writers.operators
  out.clear()
  const toPaper: Matrix = { a: pointsPerMm, b: 0, c: 0, d: -pointsPerMm, e: 0, f: top }
  // joins are round, so that the line of a sharp corner does not run on past it
  out.addLine('q')
  out.addLine(matrixOperator(compose(page.correction, toPaper)))
  out.addLine('1 j')
  for (const placed of page.placed) {
    out.addLine('q')
    out.addLine(matrixOperator(placed.matrix))
    writeDrawing(placed, page.correction, writers, tags, out)
    out.addLine('Q')
  }
  writeFurniture(page.furniture, writers, tags, out)
  out.addLine('Q')
  return out.bytes()
}

function writeDrawing(
  placed: Placed,
  correction: Matrix,
  { lettering, layers }: Writers,
  tags: PageTags,
  out: ByteSink,
): void {
  const drawing = tags.drawing(placed, boxInPoints(placed.drawing.bounds, compose(placed.matrix, correction)))
  const picture = pictureWriter(out)
  for (const { layer, marks } of byLayer(placed.drawing.marks)) {
    layers.open(layer, out)
    const shapes = marks.filter(mark => mark.kind !== 'text')
    if (shapes.length > 0) {
      drawing.openPicture(out)
      for (const shape of shapes) picture(shape)
      tags.close(out)
    }
    for (const line of textLines(marks.filter(mark => mark.kind === 'text'))) {
      drawing.openLine(out)
      for (const text of line) lettering.text(text, out)
      tags.close(out)
    }
    layers.close(out)
  }
}

function writeFurniture(
  furniture: readonly Mark[],
  { lettering, layers }: Writers,
  tags: PageTags,
  out: ByteSink,
): void {
  if (furniture.length === 0) return
  const picture = pictureWriter(out)
  tags.openFurniture(out)
  for (const { layer, marks } of byLayer(furniture)) {
    layers.open(layer, out)
    for (const mark of marks) {
      if (mark.kind === 'text') lettering.text(mark, out)
      else picture(mark)
    }
    layers.close(out)
  }
  tags.close(out)
}

/** Writes lines and solid shapes; the kind of a line is written where it changes. */
function pictureWriter(out: ByteSink): (mark: Path | Fill) => void {
  let current: LineRole | undefined
  return mark => {
    if (mark.kind === 'fill') {
      for (const { outer, holes } of mark.regions) {
        if (outer.segments.length === 0) continue
        traceContour(outer, out)
        for (const hole of holes) traceContour(hole, out)
        // even-odd: which contour is a hole does not hang on its direction
        out.addLine('f*')
      }
      return
    }
    if (mark.role !== current) {
      const { width, dashes } = lineStyles[mark.role]
      out.addLine(`${writeMm(width)} w`)
      out.addLine(`[${dashes.map(writeMm).join(' ')}] 0 d`)
      current = mark.role
    }
    for (const contour of mark.contours) traceContour(contour, out)
    if (mark.contours.some(contour => contour.segments.length > 0)) out.addLine('S')
  }
}

function boxInPoints(bounds: Bounds, matrix: Matrix): PointBox {
  const { left, bottom, right, top } = scaleBounds(transformBounds(bounds, matrix), pointsPerMm)
  return [left, bottom, right, top]
}

function matrixOperator(m: Matrix): string {
  return `${[m.a, m.b, m.c, m.d, m.e, m.f].map(writeFactor).join(' ')} cm`
}
