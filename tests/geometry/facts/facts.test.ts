import { expect, test } from 'vitest'
import { contourFacts } from '../../../src/geometry/facts/contour-facts.ts'
import { mend } from '../../../src/geometry/facts/mend.ts'
import { nesting, regionsOf } from '../../../src/geometry/facts/nesting.ts'
import { signedArea } from '../../../src/geometry/measure/area.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour } from '../../../src/geometry/shape/contour.ts'
import { point } from '../../../src/geometry/shape/point.ts'
import { polygon, polyline } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { arc, line } from '../../../src/geometry/shape/segment.ts'
import { gear } from '../generate/gear.ts'

const square = (size: number, x = 0, y = 0) =>
  rectangle({ left: x, bottom: y, right: x + size, top: y + size }).outer

test('a sound outline has no gaps, no crossings and a direction', () => {
  for (const outline of [square(10), gear(20).outer, circle(point(0, 0), 5)]) {
    expect(contourFacts([outline, reverseContour(outline)]).directions).toEqual(['left', 'right'])
    expect(contourFacts([outline])).toEqual({
      gaps: [],
      zeroLength: [],
      crossings: [],
      doubled: [],
      directions: ['left'],
    })
  }
})

test('a bow tie crosses itself, and the place and the two edges are named', () => {
  const tie = polygon([point(0, 0), point(10, 10), point(10, 0), point(0, 10)])
  expect(contourFacts([tie]).crossings).toEqual([
    {
      kind: 'cross',
      segments: [
        { contour: 0, segment: 0 },
        { contour: 0, segment: 2 },
      ],
      point: point(5, 5),
    },
  ])
})

test('an outline that touches itself says so', () => {
  const pinched = polygon([point(0, 0), point(10, 0), point(10, 10), point(5, 0), point(0, 10)])
  const facts = contourFacts([pinched])
  expect(facts.crossings.length).toBeGreaterThan(0)
  expect(facts.crossings.every(c => c.kind === 'touch' && c.point.x === 5 && c.point.y === 0)).toBe(true)
})

test('crossings of different contours and of arcs are found', () => {
  const { crossings } = contourFacts([circle(point(0, 0), 5), circle(point(6, 0), 5)])
  expect(crossings.map(c => [c.point.x, c.point.y])).toEqual([
    [3, 4],
    [3, -4],
  ])
})

test('a gap is measured, and one within the coincident distance is none', () => {
  const open: Contour = {
    segments: [
      line(point(0, 0), point(10, 0)),
      line(point(10, 0.5), point(10, 10)),
      line(point(10, 10), point(0, 1e-7)),
    ],
    closed: true,
  }
  expect(contourFacts([open]).gaps).toEqual([
    { contour: 0, segment: 0, from: point(10, 0), to: point(10, 0.5), size: 0.5 },
  ])
})

test('segments without length and doubled ones are found', () => {
  const p = point(10, 0)
  const spur: Contour = {
    segments: [
      line(point(0, 0), p),
      line(p, point(10, 1e-7)),
      line(point(10, 1e-7), point(10, 10)),
      line(point(10, 10), point(0, 10)),
      line(point(0, 10), point(6, 10)),
      line(point(6, 10), point(0, 0)),
    ],
    closed: true,
  }
  const facts = contourFacts([spur])
  expect(facts.zeroLength).toEqual([{ contour: 0, segment: 1 }])
  expect(facts.doubled).toHaveLength(1)
  expect(facts.doubled[0]!.segments.map(s => s.segment)).toEqual([3, 4])
  expect(facts.doubled[0]!.to).toEqual(point(0, 10))
})

test('contours know which they lie in, even when they touch it', () => {
  const nest = nesting([square(2, 4, 4), square(10), square(20, -5, -5), square(3, 40, 0), square(5, 0, 0)])
  expect(nest).toEqual([
    { parent: 4, depth: 3 },
    { parent: 2, depth: 1 },
    { parent: undefined, depth: 0 },
    { parent: undefined, depth: 0 },
    { parent: 1, depth: 2 },
  ])
})

test('nested contours become regions with holes, and islands regions of their own', () => {
  const contours = [square(2, 8, 8), square(20), square(10, 5, 5), square(1, 1, 1)]
  const regions = regionsOf(contours)
  expect(regions.map(r => [contours.indexOf(r.outer), r.holes.map(h => contours.indexOf(h))])).toEqual([
    [0, []],
    [1, [2, 3]],
  ])
})

const corners = [point(0, 0), point(10, 0), point(10, 10), point(0, 10)] as const

test('a small gap beside a line is closed by moving the line, and it says so', () => {
  const [a, b, c, d] = corners
  const open: Contour = {
    segments: [line(a, b), line(point(10, 0.01), c), line(c, d), line(d, point(0.01, 0))],
    closed: true,
  }
  const { contours, repairs } = mend([open], 0.1)
  expect(repairs.map(r => r.kind)).toEqual(['moved', 'moved'])
  expect(repairs[0]).toEqual({ kind: 'moved', contour: 0, from: b, to: point(10, 0.01), size: 0.01 })
  expect(contourFacts(contours).gaps).toEqual([])
  expect(contours[0]!.segments[0]!.from).toBe(contours[0]!.segments.at(-1)!.to)
  expect(contours[0]!.closed).toBe(true)
})

test('a gap wider than asked stays, and the contour is open there', () => {
  const [a, b, c, d] = corners
  const open: Contour = {
    segments: [line(a, b), line(point(10, 0.5), c), line(c, d), line(d, a)],
    closed: true,
  }
  const { contours, repairs } = mend([open], 0.1)
  expect(repairs).toEqual([])
  expect(contours.map(m => m.closed)).toEqual([false])
  expect(contours[0]!.segments[0]!.from).toEqual(point(10, 0.5))
})

test('arcs keep their circles: the gap between two is bridged', () => {
  const halves: Contour = {
    segments: [
      arc(point(5, 0), point(-5, 0), point(0, 0), 1),
      arc(point(-5, -0.01), point(5, -0.01), point(0, -0.01), 1),
    ],
    closed: true,
  }
  const { contours, repairs } = mend([halves], 0.1)
  expect(repairs.map(r => r.kind)).toEqual(['bridged', 'bridged'])
  expect(contours[0]!.segments.map(s => s.kind)).toEqual(['arc', 'line', 'arc', 'line'])
  expect(contourFacts(contours).gaps).toEqual([])
})

test('loose edges in any order and direction become one closed contour', () => {
  const [a, b, c, d] = corners
  const loose = [polyline([c, d]), polyline([b, a]), polyline([b, c]), polyline([point(0, 0.001), d])]
  const { contours, repairs } = mend(loose, 0.01)
  expect(contours).toHaveLength(1)
  expect(contours[0]!.closed).toBe(true)
  expect(Math.abs(signedArea(contours[0]!))).toBeCloseTo(100, 1)
  expect(contourFacts(contours).gaps).toEqual([])
  expect(repairs.map(r => r.kind)).toContain('joined')
  expect(repairs.map(r => r.kind)).toContain('closed')
})

test('a segment without length is dropped, and what mends twice is mended once', () => {
  const [a, b, c, d] = corners
  const near = point(10, 1e-7)
  const { contours, repairs } = mend(
    [{ segments: [line(a, b), line(b, near), line(near, c), line(c, d), line(d, a)], closed: true }],
    0.01,
  )
  expect(repairs).toEqual([{ kind: 'dropped', contour: 0, segment: 1, at: b }])
  expect(contours[0]!.segments).toHaveLength(4)
  expect(mend(contours, 0.01)).toEqual({ contours, repairs: [] })
})
