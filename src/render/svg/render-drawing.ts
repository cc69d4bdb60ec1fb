import type { Drawing } from '../../drawing/drawing.ts'
import type { Layer, Mark } from '../../drawing/mark.ts'
import { contourBounds, joinBounds, noBounds } from '../../geometry/measure/bounds.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import { svgDocument } from './document.ts'
import { layerGroups } from './groups.ts'
import { strokes } from './mark-elements.ts'
import { uniqueIds } from './unique-ids.ts'

/** A thousandth of an inch: what machines take for "follow this line" (common practice, no source). */
const hairline = { width: 0.0254, dashes: [] }

/** Room around the shape, so that a viewer does not shave the outermost line. */
const margin = 1

/**
 * The shapes of one drawing as an SVG file for a cutting machine or a vector editor: the closed contours of
 * `layers`, true size, as hairlines in the middle of which the edge lies. What is there to be read, such as
 * crosses, letters and open lines, is left out. The picture is as large as the shapes with 1 mm around them.
 *
 * @throws RangeError when a number in the drawing is not finite
 */
export function renderSvgDrawing(
  drawing: Drawing,
  language: string,
  layers: readonly Layer[] = ['cut', 'drill'],
): string {
  const marks = drawing.marks.filter(mark => layers.includes(mark.layer))
  const tight = marks.flatMap(shapes).reduce((all, c) => joinBounds(all, contourBounds(c)), noBounds)
  const bounds = tight.left <= tight.right ? tight : drawing.bounds
  const corner = { left: bounds.left - margin, top: bounds.top + margin }
  const uniqueId = uniqueIds()
  const { part, plan } = drawing.caption
  return svgDocument(
    {
      width: bounds.right - bounds.left + 2 * margin,
      height: bounds.top - bounds.bottom + 2 * margin,
      title: part ?? plan,
      language,
    },
    layerGroups(drawing.id, marks, uniqueId, mark => strokes(shapes(mark), hairline, corner)),
  )
}

function shapes(mark: Mark): readonly Contour[] {
  const cuts = mark.kind === 'path' && (mark.role === 'cut' || mark.role === 'drill')
  return cuts ? mark.contours.filter(c => c.closed) : []
}
