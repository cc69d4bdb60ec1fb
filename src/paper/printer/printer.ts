import type { Paper } from '../../drawing/page.ts'
import { compose, identity, type Matrix, shift } from '../../geometry/shape/matrix.ts'

/**
 * What a printer makes of an upright page, as shares of what it should: a length `across` the paper and one `along` it
 * come out that much longer or shorter, and what is straight up on the page leans over by `lean` to the right for
 * each millimetre.
 */
export type Printer = {
  readonly name: string
  readonly across: number
  readonly along: number
  readonly lean: number
}

/**
 * The map from a page as it is sent to the page as it comes out, about the middle of the paper. The sheet goes the same
 * way through the machine when its content lies across it, so on a lying page the two directions change places.
 */
export function printerError({ across, along, lean }: Printer, { width, height }: Paper): Matrix {
  const error: Matrix =
    width > height
      ? { a: along, b: -lean, c: 0, d: across, e: 0, f: 0 }
      : { a: across, b: 0, c: lean, d: along, e: 0, f: 0 }
  return aboutMiddle(error, width, height)
}

/** The map that undoes the printer's error, to be applied to everything on a page, last. */
export function correctionFor(printer: Printer | undefined, paper: Paper): Matrix {
  return printer === undefined ? identity : inverse(printerError(printer, paper))
}

function aboutMiddle(matrix: Matrix, width: number, height: number): Matrix {
  return compose(compose(shift(-width / 2, -height / 2), matrix), shift(width / 2, height / 2))
}

function inverse({ a, b, c, d, e, f }: Matrix): Matrix {
  const size = a * d - b * c
  return {
    a: d / size,
    b: -b / size,
    c: -c / size,
    d: a / size,
    e: (c * f - d * e) / size,
    f: (b * e - a * f) / size,
  }
}
