import { pointAt, tangentAt } from '../../src/geometry/measure/along.ts'
import { line } from '../../src/geometry/shape/segment.ts'
import { picture } from './picture.ts'
import { plate } from './shapes.ts'

/** What the kernel works on: a region, its contours, its lines and arcs, the points that neighbours share. */
export function drawData(): string {
  const page = picture()
  const region = plate()
  page.wood([region])
  for (const contour of [region.outer, ...region.holes]) {
    page.contour(contour, 'thick')
    for (const s of contour.segments) {
      const middle = pointAt(s, 0.5)
      const along = tangentAt(s, 0.5)
      if (s.kind === 'arc') {
        page.segments([line(s.centre, s.from), line(s.centre, s.to)], 'dashed')
        page.dot(s.centre, 0.7, true)
      }
      page.arrow(pointAt(s, 0.62), Math.atan2(tangentAt(s, 0.62).y, tangentAt(s, 0.62).x))
      if (s.tag !== undefined && s.kind === 'line') {
        // beside the middle, outside: the wood is on the left
        const anchor = Math.abs(along.y) < 0.5 ? 'middle' : along.y > 0 ? 'start' : 'end'
        page.words({ x: middle.x + along.y * 3, y: middle.y - along.x * 4 - 1 }, s.tag, 3.2, anchor)
      }
      page.dot(s.from)
    }
  }
  page.words({ x: 15, y: 16 }, 'hole')
  return page.finish('A region: lines and arcs that share their ends, and a hole', 150)
}
