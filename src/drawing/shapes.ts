import type { Contour } from '../geometry/shape/contour.ts'
import type { Mark } from './mark.ts'

/** The closed contours of a mark along which wood is parted or bored; none of a mark that is there to be read. */
export function shapesOf(mark: Mark): readonly Contour[] {
  const byTool = mark.kind === 'path' && (mark.role === 'cut' || mark.role === 'drill')
  return byTool ? mark.contours.filter(c => c.closed) : []
}
