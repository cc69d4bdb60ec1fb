import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chamfer, easeCorners, fillet } from '../../../src/geometry/construct/corner.ts'
import { pointAt, tangentAt } from '../../../src/geometry/measure/along.ts'
import { signedArea } from '../../../src/geometry/measure/area.ts'
import { segmentLength } from '../../../src/geometry/measure/length.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle, rectangleWithCorners } from '../../../src/geometry/shape/rectangle.ts'
import { arc, line, type Segment } from '../../../src/geometry/shape/segment.ts'
import { anyOutline } from '../any-region.ts'
import { expectValue } from '../expect-value.ts'

const at = (x: number, y: number): Point => ({ x, y })

/** Tangent length of a fillet r 10: r / tan(angle/2). Source: follows from the definition. */
test.each([
  [90, 10],
  [60, 17.3205],
  [120, 5.7735],
  [45, 24.1421],
])('a fillet of 10 in a corner of %d° takes %d off both edges', (degrees, length) => {
  const angle = (degrees * Math.PI) / 180
  const corner = at(0, 0)
  const before = line(at(100, 0), corner)
  const after = line(corner, at(100 * Math.cos(angle), 100 * Math.sin(angle)))
  const eased = expectValue(fillet(before, after, 10))
  expect(100 - segmentLength(eased.before)).toBeCloseTo(length, 4)
  expect(100 - segmentLength(eased.after)).toBeCloseTo(length, 4)
  expect(eased.corner.turn).toBe(-1)
})

function expectSmooth(first: Segment, second: Segment) {
  expect(first.to).toBe(second.from)
  const u = tangentAt(first, 1)
  const v = tangentAt(second, 0)
  expect(Math.abs(u.x * v.y - u.y * v.x)).toBeLessThan(1e-5)
  expect(u.x * v.x + u.y * v.y).toBeGreaterThan(0)
}

test('a fillet between any two edges, lines or arcs, runs smoothly out of one and into the other', () => {
  const corner = at(0, 0)
  const bow = fc.double({ min: -0.04, max: 0.04, noNaN: true })
  const edge = (to: Point, curvature: number): Segment => {
    if (Math.abs(curvature) < 0.004) return line(corner, to)
    const chord = Math.hypot(to.x, to.y)
    const r = 1 / Math.abs(curvature)
    const aside = Math.sqrt(r * r - (chord * chord) / 4) * Math.sign(curvature)
    const centre = at(to.x / 2 - (to.y / chord) * aside, to.y / 2 + (to.x / chord) * aside)
    return arc(corner, to, centre, curvature > 0 ? 1 : -1)
  }
  const angle = fc.double({ min: 1, max: 2.4, noNaN: true })
  fc.assert(
    fc.property(
      bow,
      bow,
      angle,
      fc.boolean(),
      fc.double({ min: 0.5, max: 4, noNaN: true }),
      (p, q, turned, right, radius) => {
        const outgoing = edge(at(40 * Math.cos(turned), (right ? -40 : 40) * Math.sin(turned)), q)
        const incoming = edge(at(-40, 0), p)
        const before: Segment =
          incoming.kind === 'line'
            ? line(incoming.to, corner)
            : arc(incoming.to, corner, incoming.centre, incoming.turn === 1 ? -1 : 1)
        const u = tangentAt(before, 1)
        const v = tangentAt(outgoing, 0)
        fc.pre(Math.abs(u.x * v.y - u.y * v.x) > 0.3)
        const eased = fillet(before, outgoing, radius, 'ease')
        fc.pre(eased.ok)
        const { before: a, corner: round, after: b } = expectValue(eased)
        expect(round).toMatchObject({ radius, tag: 'ease' })
        expectSmooth(a, round)
        expectSmooth(round, b)
        expect(segmentLength(a)).toBeLessThan(segmentLength(before))
        expect(segmentLength(b)).toBeLessThan(segmentLength(outgoing))
      },
    ),
  )
})

test('a fillet that does not fit, or has no corner, is a fault that says why', () => {
  const before = line(at(-5, 0), at(0, 0))
  const after = line(at(0, 0), at(0, 5))
  expect(fillet(before, after, 5.1)).toMatchObject({ fault: { reason: 'no-room' } })
  expect(fillet(before, after, 0)).toMatchObject({ fault: { reason: 'no-radius' } })
  expect(fillet(before, line(at(1, 1), at(2, 2)), 1)).toMatchObject({ fault: { reason: 'apart' } })
  expect(fillet(before, line(at(0, 0), at(9, 0)), 1)).toMatchObject({ fault: { reason: 'smooth' } })
  expect(chamfer(before, after, 5)).toMatchObject({ fault: { reason: 'no-room', facts: { room: 5 } } })
  expect(chamfer(before, after, 0)).toMatchObject({ fault: { reason: 'no-size' } })
})

test('a chamfer takes its size off both edges, along them', () => {
  const quarter = arc(at(-10, 10), at(0, 0), at(-10, 0), -1)
  const eased = expectValue(chamfer(quarter, line(at(0, 0), at(9, 0)), 3, 'cut'))
  expect(segmentLength(eased.before)).toBeCloseTo(segmentLength(quarter) - 3, 12)
  expect(eased.corner).toMatchObject({ kind: 'line', to: at(3, 0), tag: 'cut' })
})

test('easing the corners of a rectangle gives the rectangle with those corners', () => {
  const bounds = { left: 0, bottom: 0, right: 40, top: 20 }
  const eased = expectValue(
    easeCorners(rectangle(bounds).outer, [
      { radius: 5 },
      { chamfer: 3 },
      undefined,
      { radius: 15, tag: 'nose' },
    ]),
  )
  const made = expectValue(
    rectangleWithCorners(bounds, {
      'bottom-left': { radius: 5 },
      'bottom-right': { chamfer: 3 },
      'top-left': { radius: 15 },
    }),
  )
  expect(signedArea(eased)).toBeCloseTo(signedArea(made.outer), 12)
  // the left side was used up by its two corners
  expect(eased.segments.map(s => s.tag)).toEqual([undefined, 'bottom', undefined, 'right', 'top', 'nose'])
  eased.segments.forEach((s, i) => {
    expect(s.to).toBe(eased.segments[(i + 1) % eased.segments.length]!.from)
  })
})

test('neighbouring corners that need more than the edge has are a fault that names the edge', () => {
  const square = rectangle({ left: 0, bottom: 0, right: 10, top: 10 }).outer
  expect(easeCorners(square, [{ radius: 6 }, { radius: 6 }])).toMatchObject({
    fault: { reason: 'corners-meet', facts: { edge: 0 } },
  })
  expect(easeCorners(square, [{ radius: 11 }])).toMatchObject({
    fault: { reason: 'no-room', facts: { corner: 0 } },
  })
  const round: Contour = circle(at(0, 0), 10)
  expect(easeCorners(round, [{ radius: 1 }])).toMatchObject({ fault: { reason: 'smooth' } })
})

test('all corners of a rough outline rounded: closed, smooth, and less area where it was convex', () => {
  fc.assert(
    fc.property(anyOutline, outline => {
      const eased = easeCorners(
        outline,
        outline.segments.map(() => ({ radius: 0.5 })),
      )
      fc.pre(eased.ok)
      const { segments } = expectValue(eased)
      segments.forEach((s, i) => {
        expectSmooth(s, segments[(i + 1) % segments.length]!)
      })
    }),
  )
  const hexagon = polygon([at(2, 0), at(1, 2), at(-1, 2), at(-2, 0), at(-1, -2), at(1, -2)])
  const eased = expectValue(
    easeCorners(
      hexagon,
      hexagon.segments.map(() => ({ radius: 0.2 })),
    ),
  )
  expect(signedArea(eased)).toBeLessThan(signedArea(hexagon))
  expect(pointAt(eased.segments[0]!, 0)).toBe(eased.segments[0]!.from)
})
