import { expect, test } from 'vitest'
import { clipPaths } from '../../../src/geometry/cut/clip-path.ts'
import { cutByLine, cutByRectangle } from '../../../src/geometry/cut/cut-region.ts'
import { contourLength } from '../../../src/geometry/measure/length.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Outcome } from '../../../src/geometry/shape/outcome.ts'
import { point } from '../../../src/geometry/shape/point.ts'
import { polyline } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { arc } from '../../../src/geometry/shape/segment.ts'
import { totalArea } from '../boolean/laws.ts'
import { gear } from '../generate/gear.ts'
import { solid } from '../generate/solid.ts'

const made = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(outcome.fault.reason)
  return outcome.value
}
const disc = (radius: number): Region => solid(circle({ x: 0, y: 0 }, radius))
const ring: Region = { outer: circle({ x: 0, y: 0 }, 10), holes: [circle({ x: 0, y: 0 }, 5)] }

test('a line through the middle cuts a disc into halves, left and right of its direction', () => {
  const { left, right } = made(cutByLine([disc(10)], point(0, 0), point(1, 1)))
  expect(totalArea(left)).toBeCloseTo(50 * Math.PI, 9)
  expect(totalArea(right)).toBeCloseTo(50 * Math.PI, 9)
  const above = made(cutByLine([disc(10)], point(-50, 0), point(50, 0))).left
  for (const s of above[0]!.outer.segments) expect(s.from.y).toBeGreaterThanOrEqual(-1e-12)
})

test('the segment cut off a disc of radius 1 at 60° has the published area 0.09059', () => {
  // references.md, circular segments
  const cut = made(cutByLine([disc(1)], point(0, Math.cos(Math.PI / 6)), point(1, Math.cos(Math.PI / 6))))
  expect(totalArea(cut.left)).toBeCloseTo(0.09059, 5)
})

test('a line beside the shape leaves it whole on its side, and one along an edge does not cut it', () => {
  const square = rectangle({ left: 0, bottom: 0, right: 10, top: 10 })
  for (const x of [-5, 0, 10, 15]) {
    const { left, right } = made(cutByLine([square], point(x, 0), point(x, 1)))
    expect(totalArea(left)).toBeCloseTo(x > 5 ? 100 : 0, 12)
    expect(totalArea(right)).toBeCloseTo(x > 5 ? 0 : 100, 12)
  }
})

test('a cut keeps tags, and the new edges have none', () => {
  const square = rectangle({ left: 0, bottom: 0, right: 10, top: 10 })
  const { left } = made(cutByLine([square], point(4, 0), point(4, 1)))
  expect(left[0]!.outer.segments.map(s => s.tag ?? '–').sort()).toEqual(['bottom', 'left', 'top', '–'])
})

test('tiles of a shape put together have its area, and a tile beside it is empty', () => {
  const whole = gear(40)
  let sum = 0
  for (let x = -60; x < 60; x += 17) {
    for (let y = -60; y < 60; y += 23) {
      sum += totalArea(made(cutByRectangle([whole], { left: x, bottom: y, right: x + 17, top: y + 23 })))
    }
  }
  expect(sum).toBeCloseTo(totalArea([whole]), 6)
  expect(made(cutByRectangle([whole], { left: 500, bottom: 0, right: 600, top: 10 }))).toEqual([])
})

test('a hatching line through a ring has two pieces inside and three outside', () => {
  const [clipped] = clipPaths([polyline([point(-20, 3), point(20, 3)])], [ring])
  const length = (list: readonly Contour[]) => list.reduce((sum, c) => sum + contourLength(c), 0)
  expect(clipped!.inside).toHaveLength(2)
  expect(clipped!.outside).toHaveLength(3)
  // chords of the circles at distance 3: 2·√(100 − 9) and 2·√(25 − 9)
  expect(length(clipped!.inside)).toBeCloseTo(2 * Math.sqrt(91) - 8, 9)
  expect(length(clipped!.outside)).toBeCloseTo(40 - length(clipped!.inside), 9)
})

test('a path along an edge is neither inside nor outside', () => {
  const square = rectangle({ left: 0, bottom: 0, right: 10, top: 10 })
  const [clipped] = clipPaths([polyline([point(-5, 0), point(15, 0)])], [square])
  expect(clipped!.on.map(contourLength)).toEqual([10])
  expect(clipped!.inside).toEqual([])
  expect(clipped!.outside.map(contourLength)).toEqual([5, 5])
})

test('arcs are cut as arcs, and pieces that follow each other share their points and stay one path', () => {
  const top = point(0, 8)
  const path: Contour = {
    segments: [arc(point(-8, 0), top, point(0, 0), -1), arc(top, point(8, 0), point(0, 0), -1)],
    closed: false,
  }
  const [clipped] = clipPaths([path], [rectangle({ left: -4, bottom: 0, right: 4, top: 10 })])
  expect(clipped!.inside).toHaveLength(1)
  const [one, two] = clipped!.inside[0]!.segments
  expect(one!.to).toBe(two!.from)
  expect(one!.kind).toBe('arc')
  expect(contourLength(clipped!.inside[0]!)).toBeCloseTo(8 * 2 * Math.asin(0.5), 9)
})
