import type { Drawing } from '../../drawing/drawing.ts'
import { pathMark } from '../../drawing/make-mark.ts'
import type { Layer, Mark } from '../../drawing/mark.ts'
import { shapesOf } from '../../drawing/shapes.ts'
import { textBox } from '../../drawing/text-box.ts'
import { contourBounds, joinAllBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { identity } from '../../geometry/shape/matrix.ts'
import type { Fonts } from '../../text/fonts.ts'
import { svgDocument } from './document.ts'
import { layerGroups } from './groups.ts'
import { letters, strokes } from './mark-elements.ts'
import { type Lines, styleOf } from './options.ts'
import { uniqueIds } from './unique-ids.ts'

/** Room around the shape, so that a viewer does not shave the outermost line. */
const margin = 1

/** What is wanted of a file for a machine. */
export type MachineOptions = {
  /** `hairline` when left out. */
  readonly lines?: Lines
  /** Where shapes are taken from; `cut` and `drill` when left out. */
  readonly layers?: readonly Layer[]
  /** Fonts for the drawing's text, to engrave it; there is no text in the file when they are left out. */
  readonly text?: Fonts
  /** Whether what is engraved is in the file; a machine that cuts every line it finds would cut it out. */
  readonly engraving?: boolean
}

/**
 * The shapes of one drawing as an SVG file for a cutting machine or a vector editor: the closed contours of
 * `layers`, true size, in the middle of whose lines the edge lies. What is there to be read, such as crosses and
 * open lines, is left out, and text and what the plan wants engraved unless they are asked for. The picture is as large as what is in it with 1 mm
 * around it.
 *
 * @throws RangeError when a number in the drawing is not finite
 */
export function renderSvgDrawing(
  drawing: Drawing,
  language: string,
  { lines = 'hairline', layers = ['cut', 'drill'], text, engraving = false }: MachineOptions = {},
): string {
  const marks = drawing.marks.flatMap((mark): readonly Mark[] => {
    if (mark.kind === 'text') return text === undefined ? [] : [mark]
    if (mark.layer === 'engrave') return engraving ? [mark] : []
    const contours = layers.includes(mark.layer) ? shapesOf(mark) : []
    return mark.kind === 'path' && contours.length > 0 ? [pathMark(mark, mark.role, contours)] : []
  })
  const boxes = marks.flatMap(mark => boxesOf(mark, text))
  const bounds = boxes.length > 0 ? joinAllBounds(boxes) : drawing.bounds
  const corner = { left: bounds.left - margin, top: bounds.top + margin }
  const { part, plan } = drawing.caption
  return svgDocument(
    {
      width: bounds.right - bounds.left + 2 * margin,
      height: bounds.top - bounds.bottom + 2 * margin,
      title: part ?? plan,
      language,
    },
    layerGroups(drawing.id, marks, uniqueIds(), mark => {
      if (mark.kind === 'path') return strokes(mark.contours, styleOf(mark.role, lines), corner)
      return mark.kind === 'text' && text !== undefined ? letters(mark, identity, corner, text) : []
    }),
  )
}

/** What a mark takes up, its lines without their width. */
function boxesOf(mark: Mark, fonts: Fonts | undefined): readonly Bounds[] {
  if (mark.kind === 'path') return mark.contours.map(contourBounds)
  return mark.kind === 'text' && fonts !== undefined ? [textBox(fonts, mark)] : []
}
