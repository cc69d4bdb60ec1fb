import type { Point } from '../../src/geometry/shape/point.ts'
import { line } from '../../src/geometry/shape/segment.ts'
import { orientation } from '../../src/number/predicates.ts'
import { picture } from './picture.ts'

/** The distance of neighbouring doubles between 0.5 and 1. */
const ulp = 2 ** -53
const cells = 48

/**
 * On which side of a line neighbouring doubles lie: by the product of differences in doubles, and by the exact
 * sign. The line leads through (12, 12) and (24, 24), the points lie about (0.5, 0.5).
 *
 * Source of the experiment: Kettner and others, Classroom examples of robustness problems in geometric
 * computations, 2008.
 */
export function drawSigns(): string {
  const page = picture()
  const q = { x: 12, y: 12 }
  const r = { x: 24, y: 24 }
  const plain = (p: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)
  const exact = (p: Point) => orientation(p, q, r)
  ;[
    ['plain doubles', plain],
    ['exact sign', exact],
  ].forEach(([name, sign], panel) => {
    const x0 = panel * (cells + 8)
    for (let i = 0; i < cells; i++) {
      for (let j = 0; j < cells; j++) {
        const side = (sign as (p: Point) => number)({ x: 0.5 + i * ulp, y: 0.5 + j * ulp })
        if (side === 0) page.dot({ x: x0 + i, y: j }, 0.18)
        else if (side > 0) page.dot({ x: x0 + i, y: j }, 0.42)
      }
    }
    page.segments([line({ x: x0, y: 0 }, { x: x0 + cells - 1, y: cells - 1 })], 'fine')
    page.words({ x: x0 + cells / 2, y: -5 }, name as string, 3.4)
  })
  return page.finish('Left of a line or right of it: rounding decides wrongly, exact signs do not', 170)
}
