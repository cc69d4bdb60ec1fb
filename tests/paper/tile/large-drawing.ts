import fc from 'fast-check'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { fillMark, linesMark, pathMark, textMark } from '../../../src/drawing/make-mark.ts'
import type { Mark } from '../../../src/drawing/mark.ts'
import { boundsOfMarks } from '../../../src/drawing/mark-bounds.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle, rectangleWithCorners } from '../../../src/geometry/shape/rectangle.ts'
import { bundledFonts } from '../../text/bundled-font.ts'

export const fonts = bundledFonts()

/** A part larger than a page: its outline, holes with crosses, slots, lettering, a dot, a slanting line. */
export function partDrawing(
  outline:
    | readonly { readonly x: number; readonly y: number }[]
    | { readonly width: number; readonly height: number; readonly radius: number },
  holes: readonly { readonly x: number; readonly y: number; readonly radius: number }[],
  more: readonly Mark[] = [],
): Drawing {
  const contour =
    'width' in outline ? roundedRectangle(outline.width, outline.height, outline.radius) : polygon(outline)
  const marks: readonly Mark[] = [
    pathMark({ layer: 'cut', subject: 'part' }, 'cut', [contour]),
    ...holes.flatMap(({ x, y, radius }, i): readonly Mark[] => [
      pathMark({ layer: 'drill', subject: `hole-${i}` }, 'drill', [circle({ x, y }, radius)]),
      linesMark({ layer: 'drill', subject: `hole-${i}` }, 'thin', [
        [
          { x: x - radius - 2, y },
          { x: x + radius + 2, y },
        ],
        [
          { x, y: y - radius - 2 },
          { x, y: y + radius + 2 },
        ],
      ]),
    ]),
    ...more,
  ]
  return {
    id: 'part',
    caption: { plan: 'Pier', sheet: 'template', part: 'Part' },
    marks,
    bounds: boundsOfMarks(fonts, marks),
    keepWhole: [],
  }
}

function roundedRectangle(width: number, height: number, radius: number) {
  const bounds = { left: 0, bottom: 0, right: width, top: height }
  if (radius === 0) return rectangle(bounds).outer
  const corner = { radius }
  const made = rectangleWithCorners(bounds, {
    'bottom-left': corner,
    'bottom-right': corner,
    'top-left': corner,
    'top-right': corner,
  })
  if (!made.ok) throw new Error(made.fault.reason)
  return made.value.outer
}

const share = fc.double({ min: 0.02, max: 0.98, noNaN: true })

export const randomPart: fc.Arbitrary<Drawing> = fc
  .record({
    width: fc.double({ min: 60, max: 900, noNaN: true }),
    height: fc.double({ min: 280, max: 700, noNaN: true }),
    radius: fc.constantFrom(0, 12, 29),
    holes: fc.array(fc.tuple(share, share, fc.double({ min: 1, max: 15, noNaN: true })), { maxLength: 25 }),
    words: fc.array(
      fc.tuple(share, share, fc.constantFrom('A', 'side-frame/1', 'a long name of a part/12')),
      {
        maxLength: 5,
      },
    ),
  })
  .map(({ width, height, radius, holes, words }) =>
    partDrawing(
      { width, height, radius },
      holes.map(([x, y, r]) => ({ x: x * width, y: y * height, radius: r })),
      [
        linesMark({ layer: 'text' }, 'thin', [
          [
            { x: 1, y: 2 },
            { x: width - 3, y: height - 1 },
          ],
        ]),
        fillMark({ layer: 'text' }, [rectangle({ left: width / 3, right: width / 2, bottom: 20, top: 60 })]),
        ...words.map(([x, y, text]) =>
          textMark({ layer: 'text' }, [text], { x: x * width, y: y * height }, 3.5),
        ),
      ],
    ),
  )
