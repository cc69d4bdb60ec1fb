import type { Drawing } from '../../src/drawing/drawing.ts'
import { type LineRole, lineStyles } from '../../src/drawing/line-role.ts'
import type { Layer, Mark } from '../../src/drawing/mark.ts'
import type { Packet, Page, Placed } from '../../src/drawing/page.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import { compose, identity, quarterTurns, shift } from '../../src/geometry/shape/matrix.ts'
import { type Point, point } from '../../src/geometry/shape/point.ts'
import { arc, line, type Segment } from '../../src/geometry/shape/segment.ts'
import { slot } from '../../src/geometry/shape/slot.ts'
import type { Words } from '../../src/text/words.ts'

export function chain(...points: readonly Point[]): Contour {
  return { segments: points.slice(1).map((to, i) => line(points[i]!, to)), closed: false }
}

export function text(
  words: Words,
  at: Point,
  height: number,
  more: Partial<Mark & { kind: 'text' }> = {},
): Mark {
  return {
    layer: 'text',
    kind: 'text',
    words,
    at,
    height,
    align: 'start',
    angle: 0,
    weight: 'regular',
    ...more,
  }
}

export function path(layer: Layer, role: LineRole, ...contours: readonly Contour[]): Mark {
  return { layer, kind: 'path', role, contours }
}

/** A bracket with a bowed top, a rounded corner, a hole, a slot and a filled mark: every kind of mark once. */
export function bracket(): Drawing {
  const corners = {
    foot: point(0, 0),
    toe: point(90, 0),
    rise: point(90, 30),
    easing: point(80, 40),
    crown: point(0, 40),
  }
  const outline: readonly Segment[] = [
    line(corners.foot, corners.toe),
    line(corners.toe, corners.rise),
    arc(corners.rise, corners.easing, point(80, 30), 1),
    // bowed: from the easing to the crown on a wide circle whose centre lies far below
    arc(corners.easing, corners.crown, point(40, 40 - Math.sqrt(300 ** 2 - 40 ** 2)), 1),
    line(corners.crown, corners.foot),
  ]
  const hole = point(20, 20)
  return {
    id: 'bracket/1-template',
    caption: { plan: 'Pier', sheet: 'template', part: 'Bracket' },
    bounds: { left: 0, bottom: 0, right: 90, top: 45 },
    keepWhole: [],
    marks: [
      { ...path('cut', 'cut', { segments: outline, closed: true }), subject: 'bracket' },
      { ...path('drill', 'drill', circle(hole, 6.35)), subject: 'pin' },
      {
        ...path(
          'drill',
          'drill',
          chain(point(12, 20), point(19, 20)),
          chain(point(21, 20), point(28, 20)),
          chain(point(20, 12), point(20, 19)),
          chain(point(20, 21), point(20, 28)),
        ),
        subject: 'pin',
      },
      { ...path('cut', 'cut', slot(point(45, 15), point(70, 15), 8).outer), subject: 'long-slot' },
      {
        layer: 'cut',
        kind: 'fill',
        regions: [{ outer: circle(point(80, 8), 3), holes: [circle(point(80, 8), 1.5)] }],
      },
      text(['A'], point(20, 31), 5, { align: 'middle' }),
      text([{ whole: '2', over: '1', under: '2' }, ' × ', { over: '7', under: '16' }], point(57, 22), 3.5, {
        align: 'middle',
      }),
    ],
  }
}

const roles = Object.keys(lineStyles) as LineRole[]

/** Every kind of line with its name. */
export function lineKinds(): Page {
  return {
    paper: { name: 'custom', width: 150, height: 60 },
    number: 1,
    correction: identity,
    placed: [],
    furniture: roles.flatMap((role, i) => [
      path('paper', role, chain(point(35, 53 - 6 * i), point(145, 53 - 6 * i))),
      text([role], point(5, 52 - 6 * i), 3.5),
    ]),
  }
}

/** Letters in the sizes of ISO 3098, fractions, signs of our own, letters that no file has, and slopes. */
export function lettering(): Page {
  const heights = [1.8, 2.5, 3.5, 5]
  return {
    paper: { name: 'custom', width: 190, height: 110 },
    number: 1,
    correction: identity,
    placed: [],
    furniture: [
      ...heights.map((height, i) =>
        text(
          [
            'Side frame 0123456789 Il1O0 ⌀ ',
            { whole: '1', over: '3', under: '16' },
            ' ≈ ',
            { over: '27', under: '32' },
            '″ ~12.5 mm',
          ],
          point(5, 100 - 3 * i * (2 + i / 2)),
          height,
        ),
      ),
      text(['⌀ ≈ ≤ ≥ ← → ↑ ↓ ↔ ↕ × ° ′ ″ ± − – ~ ½ ⅜'], point(5, 50), 5),
      text(['ÅØß é ł Ж Ω'], point(145, 50), 5),
      text(['Bold 1 ', { over: '5', under: '8' }, ' ⌀ ł'], point(125, 26), 5, { weight: 'bold' }),
      text(['Missing 中, control \u0007, turned \u202E text'], point(5, 38), 3.5),
      text(['leaning 30°'], point(10, 10), 3.5, { angle: Math.PI / 6 }),
      text(['down the edge'], point(60, 32), 2.5, { angle: -Math.PI / 2 }),
      text(['up the edge'], point(80, 18), 3.5, { angle: Math.PI / 2, align: 'middle' }),
      text(['over head'], point(100, 20), 3.5, { angle: Math.PI, align: 'end' }),
      text(['to the end'], point(180, 20), 3.5, { align: 'end' }),
    ],
  }
}

/** One drawing as it is and by a quarter turn. */
export function placedDrawings(): Page {
  return {
    paper: { name: 'custom', width: 170, height: 105 },
    number: 1,
    correction: identity,
    placed: [
      { drawing: bracket(), matrix: shift(10, 10) },
      { drawing: bracket(), matrix: compose(quarterTurns(1), shift(160, 10)) },
    ],
    furniture: [],
  }
}

/** All of it on one page. */
export function samplePage(number = 1): Page {
  const lift = (page: Page, up: number): Placed => ({
    drawing: { ...bracket(), id: `part ${up}`, marks: page.furniture },
    matrix: shift(10, up),
  })
  return {
    paper: { name: 'letter', width: 215.9, height: 279.4 },
    number,
    correction: identity,
    placed: [lift(lineKinds(), 215), lift(lettering(), 105), ...placedDrawings().placed],
    furniture: [text([`page ${number}`], point(200, 270), 3.5, { align: 'end' })],
  }
}

export function packet(pages: Iterable<Page>, title = 'Pier'): Packet {
  return { title, language: 'en', date: new Date('2020-02-03T04:05:06Z'), pages }
}
