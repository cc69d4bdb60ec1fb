import type { LineStyle } from '../../drawing/line-role.ts'
import type { Fill, Mark, Text } from '../../drawing/mark.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import { compose, type Matrix } from '../../geometry/shape/matrix.ts'
import { transformContour } from '../../geometry/shape/transform.ts'
import type { Fonts } from '../../text/fonts.ts'
import { layOut } from '../../text/lay-out.ts'
import { textMatrix } from '../../text/place.ts'
import { plain } from '../../text/words.ts'
import { writeMm } from '../write-mm.ts'
import { xmlText } from '../xml-text.ts'
import { type SvgOptions, styleOf } from './options.ts'
import { lettersData } from './outline-data.ts'
import { type Corner, contourData, wholeCircle } from './path-data.ts'

/** What solid marks say against the strokes around them. */
const solid = 'fill="#000" stroke="none"'

/** A mark as elements; `matrix` leads from its millimetres to the page's. */
export function markElements(
  mark: Mark,
  matrix: Matrix,
  corner: Corner,
  fonts: Fonts,
  options: Required<SvgOptions>,
): readonly string[] {
  switch (mark.kind) {
    case 'path':
      return strokes(
        mark.contours.map(contour => transformContour(contour, matrix)),
        styleOf(mark.role, options.lines),
        corner,
      )
    case 'fill':
      return fills(mark, matrix, corner)
    case 'text':
      return options.text ? letters(mark, matrix, corner, fonts) : []
  }
}

/** Lines along contours, each whole circle as a circle and the others as one path. */
export function strokes(contours: readonly Contour[], style: LineStyle, corner: Corner): readonly string[] {
  const dashes = style.dashes.length > 0 ? ` stroke-dasharray="${style.dashes.map(writeMm).join(' ')}"` : ''
  const stroke = `stroke-width="${writeMm(style.width)}"${dashes}`
  const circles: string[] = []
  let data = ''
  for (const contour of contours) {
    // dashes begin where a contour begins, and a circle element has a beginning of its own
    const circle = style.dashes.length === 0 ? wholeCircle(contour) : undefined
    if (circle === undefined) {
      data += contourData(contour, corner)
      continue
    }
    const cx = writeMm(circle.centre.x - corner.left)
    const cy = writeMm(corner.top - circle.centre.y)
    circles.push(`<circle cx="${cx}" cy="${cy}" r="${writeMm(circle.radius)}" ${stroke}/>`)
  }
  return data === '' ? circles : [`<path d="${data}" ${stroke}/>`, ...circles]
}

function fills(mark: Fill, matrix: Matrix, corner: Corner): readonly string[] {
  return mark.regions.flatMap(({ outer, holes }) => {
    const data = [outer, ...holes].map(c => contourData(transformContour(c, matrix), corner)).join('')
    // even-odd: which contour is a hole does not hang on its direction
    return data === '' ? [] : [`<path d="${data}" ${solid} fill-rule="evenodd"/>`]
  })
}

/** A line of text: its outlines are seen; the title is what is read aloud and found. */
export function letters(mark: Text, matrix: Matrix, corner: Corner, fonts: Fonts): readonly string[] {
  const laid = layOut(fonts[mark.weight], mark.words, mark.height)
  const data = lettersData(laid, compose(textMatrix(laid, mark), matrix), corner)
  if (data === '') return []
  return [`<g role="img"><title>${xmlText(plain(mark.words))}</title><path d="${data}" ${solid}/></g>`]
}
