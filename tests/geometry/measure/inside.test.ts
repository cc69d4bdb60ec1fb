import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pointInContour, pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour } from '../../../src/geometry/shape/contour.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { type Arc, arc, line } from '../../../src/geometry/shape/segment.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { coincident } from '../../../src/number/tolerance.ts'

test('a point level with corners, edges and extremes of arcs is counted once', () => {
  const diamond = polygon([
    { x: 0, y: -5 },
    { x: 5, y: 0 },
    { x: 0, y: 5 },
    { x: -5, y: 0 },
  ])
  expect(pointInContour(diamond, { x: 0, y: 0 })).toBe('inside')
  expect(pointInContour(diamond, { x: -9, y: 0 })).toBe('outside')
  expect(pointInContour(diamond, { x: -9, y: 5 })).toBe('outside')
  const ring = circle({ x: 0, y: 0 }, 5)
  for (const y of [5, -5, 0]) expect(pointInContour(ring, { x: -9, y })).toBe('outside')
  const stadium = slot({ x: 0, y: 0 }, { x: 10, y: 0 }, 4).outer
  for (const y of [2, -2, 0]) expect(pointInContour(stadium, { x: -9, y })).toBe('outside')
  expect(pointInContour(stadium, { x: 5, y: 0 })).toBe('inside')
})

test('an arc that starts or ends at its highest or lowest point is counted once', () => {
  const centre = { x: 0, y: 0 }
  const places = [0, 45, 90, 135, 180, 225, 270, 315].map(degrees => {
    const quarter = [
      { x: 5, y: 0 },
      { x: 0, y: 5 },
      { x: -5, y: 0 },
      { x: 0, y: -5 },
    ][degrees / 90]
    const angle = (degrees * Math.PI) / 180
    return quarter ?? { x: 5 * Math.cos(angle), y: 5 * Math.sin(angle) }
  })
  for (const from of places) {
    for (const to of places) {
      if (from === to) continue
      for (const turn of [1, -1] as const) {
        const bow: Arc = { ...arc(from, to, centre, turn), radius: 5 }
        const shape: Contour = { segments: [bow, line(to, from)], closed: true }
        for (let i = 0; i < 40; i++) {
          const p = { x: -6 + i * 0.31, y: (i % 9) - 4 }
          const out = Math.hypot(p.x, p.y)
          const cross = (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x)
          const chord = Math.hypot(to.x - from.x, to.y - from.y)
          // not so near to an edge that the comparison itself would be in doubt
          if (Math.abs(out - 5) < 1e-3 || Math.abs(cross) < 1e-3 * chord) continue
          const wanted = out < 5 && cross < 0 === (turn === 1) ? 'inside' : 'outside'
          expect(pointInContour(shape, p), JSON.stringify({ from, to, turn, p })).toBe(wanted)
        }
      }
    }
  }
})

test('within coincident of the boundary is on it, a little farther is not', () => {
  const ring = circle({ x: 1000, y: -300 }, 25)
  const at = (angle: number, off: number) => ({
    x: 1000 + (25 + off) * Math.cos(angle),
    y: -300 + (25 + off) * Math.sin(angle),
  })
  fc.assert(
    fc.property(fc.double({ min: 0, max: 7, noNaN: true }), angle => {
      expect(pointInContour(ring, at(angle, coincident * 0.9))).toBe('on')
      expect(pointInContour(ring, at(angle, coincident * 1.1))).toBe('outside')
      expect(pointInContour(ring, at(angle, coincident * -1.1))).toBe('inside')
    }),
  )
})

test('a hole is outside, whichever way it runs', () => {
  const plate = rectangle({ left: 0, bottom: 0, right: 10, top: 10 })
  const hole = circle({ x: 5, y: 5 }, 2)
  for (const h of [hole, reverseContour(hole)]) {
    const region = { ...plate, holes: [h] }
    expect(pointInRegion(region, { x: 5, y: 5 })).toBe('outside')
    expect(pointInRegion(region, { x: 1, y: 5 })).toBe('inside')
    expect(pointInRegion(region, { x: 7, y: 5 })).toBe('on')
    expect(pointInRegion(region, { x: 10, y: 5 })).toBe('on')
    expect(pointInRegion(region, { x: 11, y: 5 })).toBe('outside')
  }
})
