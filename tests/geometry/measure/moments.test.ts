import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import { regionArea, signedArea } from '../../../src/geometry/measure/area.ts'
import { segmentBounds } from '../../../src/geometry/measure/bounds.ts'
import { contourLength } from '../../../src/geometry/measure/length.ts'
import { principalMoments, regionMoments } from '../../../src/geometry/measure/moments.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { apply } from '../../../src/geometry/shape/matrix.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { arc, line } from '../../../src/geometry/shape/segment.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { anyRegion, anySimilarity } from '../any-region.ts'
import { openReference, type Reference } from '../opencascade.ts'

const origin = { x: 0, y: 0 }
const halfDisc: Region = {
  outer: {
    segments: [arc({ x: 2, y: 0 }, { x: -2, y: 0 }, origin, 1), line({ x: -2, y: 0 }, { x: 2, y: 0 })],
    closed: true,
  },
  holes: [],
}
const ring: Region = { outer: circle({ x: 7, y: -3 }, 5), holes: [circle({ x: 7, y: -3 }, 3)] }
const triangle: Region = { outer: polygon([origin, { x: 6, y: 0 }, { x: 0, y: 3 }]), holes: [] }

/** Closed formulas of the handbooks of mechanics; centroid x and y, ∫(x − cx)², ∫(y − cy)², ∫(x − cx)(y − cy). */
const known: readonly [string, Region, number, number, number, number, number][] = [
  [
    'rectangle b·h: hb³/12, bh³/12',
    rectangle({ left: 1, bottom: 2, right: 7, top: 4 }),
    4,
    3,
    (2 * 6 ** 3) / 12,
    (6 * 2 ** 3) / 12,
    0,
  ],
  [
    'circle: πr⁴/4',
    { outer: circle({ x: 9, y: 9 }, 5), holes: [] },
    9,
    9,
    (Math.PI * 625) / 4,
    (Math.PI * 625) / 4,
    0,
  ],
  ['ring: π(R⁴ − r⁴)/4', ring, 7, -3, (Math.PI * (625 - 81)) / 4, (Math.PI * (625 - 81)) / 4, 0],
  [
    'half disc: 4r/3π; πr⁴/8, (π/8 − 8/9π)r⁴',
    halfDisc,
    0,
    8 / (3 * Math.PI),
    Math.PI * 2,
    (Math.PI / 8 - 8 / (9 * Math.PI)) * 16,
    0,
  ],
  [
    'right triangle: hb³/36, bh³/36, −b²h²/72',
    triangle,
    2,
    1,
    (3 * 6 ** 3) / 36,
    (6 * 3 ** 3) / 36,
    (-36 * 9) / 72,
  ],
]

test.each(known)('centroid and second moments of a %s', (_, region, x, y, xx, yy, xy) => {
  const m = regionMoments(region)
  expect(m.centroid.x).toBeCloseTo(x, 12)
  expect(m.centroid.y).toBeCloseTo(y, 12)
  expect(m.xx).toBeCloseTo(xx, 10)
  expect(m.yy).toBeCloseTo(yy, 10)
  expect(m.xy).toBeCloseTo(xy, 10)
  expect(m.area).toBeCloseTo(regionArea(region), 10)
})

test('the moments of a flat arc keep their digits', () => {
  // a strip whose upper side bulges by a hair: chord 100, radius 10 km
  const radius = 1e7
  const centre = { x: 50, y: 1 - Math.sqrt((radius - 50) * (radius + 50)) }
  const corners = [origin, { x: 100, y: 0 }, { x: 100, y: 1 }, { x: 0, y: 1 }] as const
  const straight = polygon(corners)
  const outer = { ...straight, segments: straight.segments.with(2, arc(corners[2], corners[3], centre, 1)) }
  const sagitta = 50 ** 2 / (2 * radius)
  const m = regionMoments({ outer, holes: [] })
  expect(m.area - 100).toBeCloseTo((2 / 3) * sagitta * 100, 9)
  // so flat, the arc is a parabola: ∫(x − 50)²·h·(1 − (x − 50)²/50²) dx over the chord
  expect(m.xx - 100 ** 3 / 12).toBeCloseTo((4 / 15) * sagitta * 50 ** 3, 5)
  expect(m.centroid.x).toBeCloseTo(50, 10)
})

test('the principal axes follow a slot that leans', () => {
  const leaning = slot(origin, { x: 30, y: 40 }, 10)
  const { major, minor, direction } = principalMoments(regionMoments(leaning))
  expect(direction).toBeCloseTo(Math.atan2(4, 3), 12)
  const upright = regionMoments(slot(origin, { x: 50, y: 0 }, 10))
  expect(major / upright.xx).toBeCloseTo(1, 12)
  expect(minor / upright.yy).toBeCloseTo(1, 12)
})

test('area, length, centroid and moments follow a turn, mirror, shift and scale, whichever way contours run', () => {
  fc.assert(
    fc.property(anyRegion, anySimilarity, fc.boolean(), (region, { matrix, factor }, reversed) => {
      const given = reversed ? { outer: reverseContour(region.outer), holes: region.holes } : region
      const before = regionMoments(given)
      const moved = transformRegion(region, matrix)
      const after = regionMoments(moved)
      const centre = apply(matrix, before.centroid)
      expect(after.area / before.area / factor ** 2).toBeCloseTo(1, 8)
      expect(contourLength(moved.outer) / contourLength(region.outer) / factor).toBeCloseTo(1, 8)
      expect(Math.hypot(after.centroid.x - centre.x, after.centroid.y - centre.y)).toBeLessThan(1e-6)
      const polar = (m: typeof after) => m.xx + m.yy
      expect(polar(after) / polar(before) / factor ** 4).toBeCloseTo(1, 6)
      const a = principalMoments(before)
      const b = principalMoments(after)
      expect((b.major - a.major * factor ** 4) / b.major).toBeCloseTo(0, 6)
      expect(signedArea(reverseContour(region.outer))).toBeCloseTo(-signedArea(region.outer), 9)
    }),
  )
})

/** The reference: replicad-opencascadejs, a solid modeller that knows true arcs. */
let reference: Reference
beforeAll(async () => {
  reference = await openReference()
}, 60_000)

test('area, perimeter, centroid and moments agree with a solid modeller', () => {
  const { occ, face } = reference
  fc.assert(
    fc.property(anyRegion, region => {
      const m = regionMoments(region)
      const made = face(region)
      const at = new occ.gp_Pnt(m.centroid.x, m.centroid.y, 0)
      const surface = new occ.GProp_GProps(at)
      occ.BRepGProp.SurfaceProperties(made, surface, false, false)
      const rim = new occ.GProp_GProps()
      occ.BRepGProp.LinearProperties(made, rim, false, false)
      const axis = (x: number, y: number) =>
        surface.MomentOfInertia(new occ.gp_Ax1(at, new occ.gp_Dir(x, y, 0)))
      const size = m.xx + m.yy
      expect(surface.Mass() / m.area).toBeCloseTo(1, 9)
      expect(surface.CentreOfMass().X()).toBeCloseTo(m.centroid.x, 7)
      expect(surface.CentreOfMass().Y()).toBeCloseTo(m.centroid.y, 7)
      expect((axis(0, 1) - m.xx) / size).toBeCloseTo(0, 9)
      expect((axis(1, 0) - m.yy) / size).toBeCloseTo(0, 9)
      expect((axis(1, 1) - (m.xx + m.yy) / 2 + m.xy) / size).toBeCloseTo(0, 9)
      const perimeter = [region.outer, ...region.holes].reduce((sum, c) => sum + contourLength(c), 0)
      expect(rim.Mass() / perimeter).toBeCloseTo(1, 9)
      for (const thing of [made, surface, rim]) thing.delete()
    }),
    { numRuns: 60 },
  )
})

test('the bounds of an arc hold every point of it and touch it on all four sides', () => {
  const angle = fc.double({ min: -10, max: 10, noNaN: true })
  fc.assert(
    fc.property(angle, angle, fc.constantFrom(1, -1), (a, b, turn) => {
      fc.pre(Math.abs(Math.sin((a - b) / 2)) > 1e-3)
      const on = (t: number) => ({ x: 3 + 20 * Math.cos(t), y: -1 + 20 * Math.sin(t) })
      const s = arc(on(a), on(b), { x: 3, y: -1 }, turn as 1 | -1)
      const box = segmentBounds(s)
      const full = 2 * Math.PI
      const width = ((((b - a) * turn) % full) + full) % full
      let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity]
      for (let i = 0; i <= 2000; i++) {
        const p = on(a + (turn * width * i) / 2000)
        left = Math.min(left, p.x)
        right = Math.max(right, p.x)
        bottom = Math.min(bottom, p.y)
        top = Math.max(top, p.y)
      }
      // between samples an arc rises by r·step²/8 at most
      const bound = (20 * (full / 2000) ** 2) / 8 + 1e-9
      for (const [given, sampled] of [
        [left, box.left],
        [bottom, box.bottom],
        [box.right, right],
        [box.top, top],
      ] as const) {
        expect(given - sampled).toBeGreaterThanOrEqual(-1e-9)
        expect(given - sampled).toBeLessThanOrEqual(bound)
      }
    }),
  )
})
