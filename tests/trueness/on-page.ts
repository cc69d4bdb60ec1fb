import type { Page, Placed } from '../../src/drawing/page.ts'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import {
  magnification,
  moved,
  movedCurve,
  type ReadBack,
  type ReadChain,
  type Six,
} from '../readback/read-back.ts'

/** The matrix of a placed drawing as the reader of a file writes one. */
export function sixOf({ matrix: { a, b, c, d, e, f } }: Pick<Placed, 'matrix'>): Six {
  return [a, b, c, d, e, f]
}

export function inverse([a, b, c, d, e, f]: Six): Six {
  const size = a * d - b * c
  return [d / size, -b / size, -c / size, a / size, (c * f - d * e) / size, (b * e - a * f) / size]
}

/** The page as it was before its correction for a printer, which is what has to be true. */
export function beforeCorrection(page: Page, read: ReadBack): ReadBack {
  return seenThrough(inverse(sixOf({ matrix: page.correction })), read)
}

/** What was read, as another frame sees it. */
export function seenThrough(matrix: Six, read: ReadBack): ReadBack {
  return {
    ...read,
    chains: read.chains.map(chain => ({
      ...chain,
      curves: chain.curves.map(curve => movedCurve(matrix, curve)),
      width: chain.width * magnification(matrix),
    })),
  }
}

/** Where a placed drawing lies on its page. */
export function areaOf({ drawing, matrix }: Placed): Bounds {
  const { left, right, bottom, top } = drawing.bounds
  const six = sixOf({ matrix })
  const corners = [moved(six, { x: left, y: bottom }), moved(six, { x: right, y: top })]
  const xs = corners.map(p => p.x)
  const ys = corners.map(p => p.y)
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) }
}

/** A drawing's bounds hold its ink, and what was read may be a rounding beyond them. */
const rounding = 0.01

/** What of a page lies in an area. */
export function within(area: Bounds, read: ReadBack): ReadBack {
  return { ...read, chains: read.chains.filter(chain => liesIn(area, chain)) }
}

function liesIn({ left, right, bottom, top }: Bounds, { curves }: ReadChain): boolean {
  return curves.every(curve =>
    [0, 0.5, 1]
      .map(curve.at)
      .every(
        ({ x, y }) =>
          x >= left - rounding && x <= right + rounding && y >= bottom - rounding && y <= top + rounding,
      ),
  )
}
