import { expect, test } from 'vitest'
import type { Mark } from '../../src/drawing/mark.ts'
import { pointAt } from '../../src/geometry/measure/along.ts'
import { contourBounds } from '../../src/geometry/measure/bounds.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import { radians } from '../../src/number/degrees.ts'
import { planOf } from '../model/model-of.ts'
import { sheetsOf } from './sheets-of.ts'

const about = (cut: string, sheet = 0): readonly Mark[] => {
  const text = planOf(`    make: 2\n    mirrored: true\n    cuts:\n      - { ${cut} }\n`)
  return sheetsOf(text)[sheet]!.drawings[0].marks.filter(
    m => m.subject === 'plank.leg' && m.layer === 'drill',
  )
}

/** The closed contours that are drawn in one way. */
function closed(marks: readonly Mark[], role: string): readonly Contour[] {
  return marks.flatMap(m => (m.kind === 'path' && m.role === role ? m.contours.filter(c => c.closed) : []))
}

const near = (value: number) => expect.closeTo(value, 3)

function box(contours: readonly Contour[]) {
  const [contour, ...others] = contours
  expect(others).toEqual([])
  const { left, right, bottom, top } = contourBounds(contour!)
  return [left, right, bottom, top]
}

/** On 100 x 40 x 20; half of 8 / cos 30° is 4.6188, and 20·tan 30° is 11.547: by hand. */
const leaning = 'hole: leg, at: { left: 40, bottom: 15 }, diameter: 8, lean: { toward: right, angle: 30 }'
const half = 4 / Math.cos(radians(30))
const aside = 20 * Math.tan(radians(30))

test('where a leaning hole enters is its true ellipse; where it comes out on the back, the same ellipse dashed', () => {
  expect(box(closed(about(leaning), 'drill'))).toEqual([40 - half, 40 + half, 11, 19].map(near))
  const out = 40 - aside
  expect(box(closed(about(leaning), 'hidden'))).toEqual([out - half, out + half, 11, 19].map(near))
})

test('in the mirrored piece both are mirrored', () => {
  expect(box(closed(about(leaning, 1), 'drill'))).toEqual([60 - half, 60 + half, 11, 19].map(near))
  const out = 60 + aside
  expect(box(closed(about(leaning, 1), 'hidden'))).toEqual([out - half, out + half, 11, 19].map(near))
})

test('a stopped hole, and one that comes out by an edge, shows no way out', () => {
  expect(closed(about(`${leaning}, depth: 6`), 'hidden')).toEqual([])
  expect(
    closed(
      about('hole: leg, at: { left: 8, bottom: 15 }, diameter: 4, lean: { toward: right, angle: 30 }'),
      'hidden',
    ),
  ).toEqual([])
})

test.each([
  ['{ toward: right, angle: 8 }', 0],
  ['{ toward: bottom, angle: 8 }', -90],
  ['[{ toward: left, angle: 10 }, { toward: top, angle: 10 }]', 135],
])(
  'the sight line of %s goes through the centre, and its arrow points the way that a rod leans, at %d°',
  (lean, at) => {
    const marks = about(`hole: leg, at: { left: 40, bottom: 15 }, diameter: 8, lean: ${lean}`)
    const arrows = marks.flatMap(m => (m.kind === 'fill' ? m.regions.map(r => r.outer) : []))
    const arrow = arrows.find(c => c.segments.length === 3)!
    const way = { x: Math.cos(radians(at)), y: Math.sin(radians(at)) }
    const along = ({ x, y }: { x: number; y: number }) => (x - 40) * way.x + (y - 15) * way.y
    const across = ({ x, y }: { x: number; y: number }) => (y - 15) * way.x - (x - 40) * way.y
    const corners = arrow.segments.map(s => s.from)
    const tip = corners.reduce((a, b) => (along(a) > along(b) ? a : b))
    expect(across(tip)).toBeCloseTo(0, 9)
    expect(along(tip)).toBeGreaterThan(4)
    const lines = marks.flatMap(m => (m.kind === 'path' && m.role === 'thin' ? m.contours : []))
    const sight = lines.filter(c =>
      [0, 1].every(end => Math.abs(across(pointAt(c.segments[0]!, end))) < 1e-9),
    )
    const reach = sight.flatMap(c => [along(c.segments[0]!.from), along(c.segments[0]!.to)])
    expect(Math.min(...reach)).toBeLessThan(-4)
    expect(Math.max(...reach)).toBeGreaterThan(4)
  },
)

test('a mouth is an edge of its own about the hole, on the back a dashed one, and no line to bore by', () => {
  const bolt = 'hole: leg, at: { left: 40, bottom: 15 }, diameter: 4, counterbore: 10 x 5'
  expect(box(closed(about(bolt), 'drill'))).toEqual([38, 42, 13, 17].map(near))
  expect(box(closed(about(bolt), 'thin'))).toEqual([35, 45, 10, 20].map(near))
  const behind = 'hole: leg, on: back, at: { left: 40, bottom: 15 }, diameter: 4, countersink: 10'
  expect(box(closed(about(behind), 'hidden'))).toEqual([35, 45, 10, 20].map(near))
  expect(closed(about(behind), 'thin')).toEqual([])
})

test.each([
  // from the back it leans toward the right, so on the front it comes out farther left
  ['on: back, at: { left: 40, bottom: 15 }', 'right', 40 - aside, 15, half, 4],
  ['on: back, at: { left: 40, bottom: 15 }', 'top', 40, 15 - aside, 4, half],
])(
  'a leaning hole { %s } that comes out on the front is an edge there, without a cross',
  (where, side, x, y, w, h) => {
    const marks = about(`hole: leg, ${where}, diameter: 8, lean: { toward: ${side}, angle: 30 }`)
    expect(marks).toHaveLength(1)
    expect(box(closed(marks, 'thin'))).toEqual([x - w, x + w, y - h, y + h].map(near))
  },
)

/** From the top, 5 behind the front, leaning 45° toward the back it goes to the front: 5 down, by an ellipse of 2 × 2·√2. */
test('one from an edge comes out on the front by the ellipse of that face', () => {
  const marks = about(
    'hole: leg, on: top, at: { left: 40, front: 5 }, diameter: 4, lean: { toward: back, angle: 45 }',
  )
  const long = 2 * Math.SQRT2
  expect(box(closed(marks, 'thin'))).toEqual([38, 42, 35 - long, 35 + long].map(near))
})
