import { lettering } from '../../drawing/lettering.ts'
import { linesMark, pathMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import type { Page, Paper } from '../../drawing/page.ts'
import { wrap } from '../../drawing/wrap.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { identity } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import { frameOf } from '../frame.ts'
import { pageHead } from '../furniture.ts'
import { upright } from '../papers.ts'
import { type Bars, barsFor, squareSide } from '../printer/scale-lengths.ts'
import { longBar, longBarReach } from './long-bar.ts'
import { exampleExtent, examplesFor, readingExample } from './reading-example.ts'

/** The sheet and the bars on it; or nothing where the paper has no room for its words. */
export type ScaleSheet = { readonly page: Page; readonly bars: Bars }

const belongs = { layer: 'paper', subject: 'scale-sheet' } as const

/** White between the across bar, the square, the words and what stands beside them. */
const aside = 2.5
/** White between the along bar and the rest; wider, and A4 has no room for 180 mm beside it. */
const besideBar = 1.5

/**
 * A sheet to find out what a printer makes of a length: a bar across and one along, a square with its diagonals, how
 * they are read, boxes to write in, and the command that keeps the readings. Never corrected for a printer.
 */
export function scaleSheet(
  paper: Paper,
  workshop: Pick<Workshop, 'printer'>,
  fonts: Fonts,
): ScaleSheet | undefined {
  const frame = frameOf(upright(paper), workshop)
  const { head, foot } = frame
  const area: Bounds = { left: head.left, right: head.right, bottom: foot.bottom, top: head.bottom - aside }
  const column = area.left + longBarReach.mm + longBarReach.inch + besideBar
  const bars = barsFor(area.right - column - ink, area.top - area.bottom - 2 * ink)
  const side = squareSide(bars)
  const across = { x: column, y: area.bottom + longBarReach.inch }
  const square: Bounds = {
    left: column,
    right: column + side,
    bottom: across.y + longBarReach.mm + aside,
    top: across.y + longBarReach.mm + aside + side,
  }
  const words = wordsAbove({ ...area, left: column, bottom: square.top + aside }, bars, fonts)
  if (words === undefined || side <= 0) return undefined
  const caption = { plan: 'Scale sheet', sheet: `for ${paper.name} paper` }
  const furniture = [
    ...pageHead(frame, { captions: [caption], number: 1, count: 1 }, fonts),
    ...longBar('across', across, bars.across),
    ...longBar('along', { x: area.left + longBarReach.mm, y: area.bottom + ink }, bars.along),
    ...squareMarks(square),
    ...boxes({ x: square.right + 2 * aside, y: square.top }),
    ...words,
  ]
  return { page: { paper: frame.paper, number: 1, placed: [], furniture, correction: identity }, bars }
}

/** Room for the width of an end mark's line. */
const ink = 0.5

function squareMarks({ left, right, bottom, top }: Bounds): readonly Mark[] {
  const side = right - left
  const from = side * 0.12
  const label = (words: string, at: Point, angle: number, align: 'start' | 'end'): Mark =>
    textMark(belongs, [words], at, lettering.medium, { angle, align })
  return [
    pathMark(belongs, 'cut', [rectangle({ left, right, bottom, top }).outer]),
    linesMark(belongs, 'cut', [
      [
        { x: left, y: bottom },
        { x: right, y: top },
      ],
      [
        { x: right, y: bottom },
        { x: left, y: top },
      ],
    ]),
    label('diagonal A', { x: left + from, y: bottom + from + 1.5 }, Math.PI / 4, 'start'),
    label('diagonal B', { x: right - from, y: bottom + from + 1.5 }, -Math.PI / 4, 'end'),
  ]
}

const box = { width: 24, height: 9, pitch: 15 } as const

/** Boxes to write the readings in, one below the other. */
function boxes(at: Point): readonly Mark[] {
  return ['across', 'along', 'diagonal A', 'diagonal B'].flatMap((name, i): readonly Mark[] => {
    const top = at.y - lettering.small - 1.2 - i * box.pitch
    return [
      textMark(belongs, [name], { x: at.x, y: top + 1.2 }, lettering.small),
      pathMark(belongs, 'cut', [
        rectangle({ left: at.x, right: at.x + box.width, top, bottom: top - box.height }).outer,
      ]),
    ]
  })
}

/** How the sheet is used, with the examples; as large as there is room for. */
function wordsAbove(area: Bounds, bars: Bars, fonts: Fonts): readonly Mark[] | undefined {
  for (const height of [lettering.medium, lettering.small]) {
    const marks = wordsOfHeight(height, area, bars, fonts)
    const { bottom, right } = boundsOfMarks(fonts, marks)
    if (bottom >= area.bottom && right <= area.right) return marks
  }
  return undefined
}

function wordsOfHeight(height: number, area: Bounds, bars: Bars, fonts: Fonts): readonly Mark[] {
  const pitch = height * 1.6
  let y = area.top
  const marks: Mark[] = []
  for (const { text, weight } of steps(bars)) {
    for (const row of wrap(text, fonts[weight], height, area.right - area.left)) {
      y -= pitch
      marks.push(textMark(belongs, [row], { x: area.left, y }, height, { weight }))
    }
  }
  const examples = examplesFor(bars.across).flatMap((example, i) =>
    readingExample({ x: area.left + i * (exampleExtent.width + aside), y: y - aside }, example, fonts),
  )
  return [...marks, ...examples]
}

function steps({
  across,
  along,
}: Bars): readonly { readonly text: string; readonly weight: 'regular' | 'bold' }[] {
  const regular = [
    '1  Print at 100 %, never “fit to page”, on the paper that you will work with, and let it cool.',
    '2  Lay a steel rule along a bar, its zero on the mark 0, so that it covers the other units. The last of its lines before the far end mark gives the whole; the line of the vernier that meets a line of the rule gives the tenths of a millimetre, or the 128ths of an inch beyond a sixteenth. Drawn larger below.',
    '3  Measure both bars and both diagonals of the square, write them down, and type:',
  ].map(text => ({ text, weight: 'regular' as const }))
  const command = `npx paperjig printer NAME --across … --along … --bars ${across}x${along} --diagonals A B`
  return [
    ...regular,
    { text: command, weight: 'bold' },
    { text: 'Then print with --printer NAME.', weight: 'regular' },
  ]
}
