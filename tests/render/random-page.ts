import fc from 'fast-check'
import type { Drawing } from '../../src/drawing/drawing.ts'
import type { LineRole } from '../../src/drawing/line-role.ts'
import type { Layer, Mark } from '../../src/drawing/mark.ts'
import type { Page } from '../../src/drawing/page.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import { compose, identity, type Matrix, quarterTurns, shift } from '../../src/geometry/shape/matrix.ts'
import { type Point, point } from '../../src/geometry/shape/point.ts'
import { arc, line, type Segment } from '../../src/geometry/shape/segment.ts'
import type { Words } from '../../src/text/words.ts'

/**
 * Lengths of all sizes alike: from half a millimetre to three metres, by their logarithm.
 */
const radius = fc.double({ min: Math.log(0.5), max: Math.log(3000), noNaN: true }).map(Math.exp)
const coordinate = fc.double({ min: -400, max: 400, noNaN: true })
const place = fc.record({ x: coordinate, y: coordinate })
const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true })

function onCircle(centre: Point, r: number, at: number): Point {
  return point(centre.x + r * Math.cos(at), centre.y + r * Math.sin(at))
}

/** One arc alone, of any radius, direction and sweep from a hundredth of a radian to nearly all around. */
const loneArc: fc.Arbitrary<Contour> = fc
  .record({
    centre: place,
    radius,
    start: angle,
    sweep: fc.double({ min: 0.01, max: 2 * Math.PI - 0.01, noNaN: true }),
    turn: fc.constantFrom<1 | -1>(1, -1),
  })
  .map(({ centre, radius: r, start, sweep, turn }) => ({
    segments: [arc(onCircle(centre, r, start), onCircle(centre, r, start + turn * sweep), centre, turn)],
    closed: false,
  }))

const halfArc: fc.Arbitrary<Contour> = fc
  .record({ centre: place, radius, start: angle, turn: fc.constantFrom<1 | -1>(1, -1) })
  .map(({ centre, radius: r, start, turn }) => {
    const from = onCircle(centre, r, start)
    const to = onCircle(centre, r, start + Math.PI)
    return { segments: [arc(from, to, centre, turn), line(to, from)], closed: true }
  })

const polygon: fc.Arbitrary<Contour> = fc
  .tuple(fc.array(place, { minLength: 3, maxLength: 8 }), fc.boolean())
  .map(([corners, closed]) => {
    const edges = corners.slice(1).map((to, i): Segment => line(corners[i]!, to))
    return { segments: closed ? [...edges, line(corners.at(-1)!, corners[0]!)] : edges, closed }
  })

const fullCircle: fc.Arbitrary<Contour> = fc
  .record({ centre: place, radius })
  .map(({ centre, radius: r }) => circle(centre, r))

const contour = fc.oneof(loneArc, halfArc, polygon, fullCircle)

const role = fc.constantFrom<LineRole>(
  'cut',
  'rough-cut',
  'drill',
  'hidden',
  'centre',
  'fold',
  'thin',
  'wide',
)
const layer = fc.constantFrom<Layer>('cut', 'drill', 'dimension', 'text', 'paper')

const words: fc.Arbitrary<Words> = fc
  .array(
    fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 6 }),
      fc.record({ whole: fc.nat(99).map(String), over: fc.nat(63).map(String), under: fc.constant('64') }),
    ),
    { minLength: 1, maxLength: 3 },
  )
  .map(parts => ['a', ...parts])

const mark: fc.Arbitrary<Mark> = fc.oneof(
  fc.record({
    kind: fc.constant('path' as const),
    layer,
    role,
    contours: fc.array(contour, { maxLength: 3 }),
  }),
  fc.record({
    kind: fc.constant('fill' as const),
    layer,
    regions: fc.array(fc.record({ outer: fullCircle, holes: fc.array(fullCircle, { maxLength: 2 }) }), {
      maxLength: 2,
    }),
  }),
  fc.record({
    kind: fc.constant('text' as const),
    layer,
    words,
    at: place,
    height: fc.double({ min: 1.8, max: 14, noNaN: true }),
    align: fc.constantFrom('start' as const, 'middle' as const, 'end' as const),
    angle: fc.oneof(angle, fc.constantFrom(0, Math.PI / 2, Math.PI, -Math.PI / 2)),
    weight: fc.constantFrom('regular' as const, 'bold' as const),
  }),
)

const drawing: fc.Arbitrary<Drawing> = fc
  .record({ id: fc.string({ maxLength: 8 }), marks: fc.array(mark, { maxLength: 6 }) })
  .map(({ id, marks }) => ({
    id,
    caption: { plan: 'Random', sheet: 'template' },
    marks,
    bounds: { left: -400, bottom: -400, right: 400, top: 400 },
    keepWhole: [],
  }))

const placement: fc.Arbitrary<Matrix> = fc
  .record({ turns: fc.integer({ min: 0, max: 3 }), x: coordinate, y: coordinate })
  .map(({ turns, x, y }) => compose(quarterTurns(turns), shift(x, y)))

/** A printer three per cent off, and askew. */
const correction: fc.Arbitrary<Matrix> = fc.record({
  a: fc.double({ min: 0.97, max: 1.03, noNaN: true }),
  b: fc.double({ min: -0.01, max: 0.01, noNaN: true }),
  c: fc.double({ min: -0.01, max: 0.01, noNaN: true }),
  d: fc.double({ min: 0.97, max: 1.03, noNaN: true }),
  e: fc.double({ min: -5, max: 5, noNaN: true }),
  f: fc.double({ min: -5, max: 5, noNaN: true }),
})

/** Pages with everything that a page may carry, much of it beyond the edges of the paper. */
export const randomPage: fc.Arbitrary<Page> = fc.record({
  paper: fc.record({
    name: fc.constant('custom'),
    width: fc.double({ min: 50, max: 1200, noNaN: true }),
    height: fc.double({ min: 50, max: 1200, noNaN: true }),
  }),
  number: fc.nat(100),
  placed: fc.array(fc.record({ drawing, matrix: placement }), { maxLength: 3 }),
  furniture: fc.array(mark, { maxLength: 3 }),
  correction: fc.oneof(fc.constant(identity), correction),
})
