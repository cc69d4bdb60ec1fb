import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { nearestOnContour } from '../../../src/geometry/measure/nearest.ts'
import {
  contourSeparation,
  regionSeparation,
  thinnestWall,
} from '../../../src/geometry/measure/separation.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import { shift } from '../../../src/geometry/shape/matrix.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformContour, transformRegion } from '../../../src/geometry/shape/transform.ts'
import { anyRegion, anySimilarity } from '../any-region.ts'
import { openReference, type Reference } from '../opencascade.ts'

const disc = (x: number, y: number, r: number): Region => ({ outer: circle({ x, y }, r), holes: [] })
const plate: Region = {
  ...rectangle({ left: 0, bottom: 0, right: 100, top: 60 }),
  holes: [circle({ x: 20, y: 30 }, 15)],
}

/** Distances by closed formula, mm. */
const known: readonly [string, Region, Region, number][] = [
  ['two discs apart', disc(0, 0, 5), disc(30, 40, 10), 35],
  ['two discs that touch', disc(0, 0, 5), disc(15, 0, 10), 0],
  ['two discs that overlap', disc(0, 0, 5), disc(12, 0, 10), 0],
  ['a disc inside another', disc(0, 0, 5), disc(1, 0, 30), 0],
  ['a disc in a hole of a plate', disc(20, 30, 10), plate, 5],
  ['a disc in the wood of a plate', disc(70, 30, 10), plate, 0],
  ['a slot beside a plate', slot({ x: 110, y: 0 }, { x: 110, y: 50 }, 8), plate, 6],
  ['two identical plates', plate, plate, 0],
  ['corner to corner', rectangle({ left: 103, bottom: 64, right: 200, top: 90 }), plate, 5],
]

test.each(known)('the distance of %s', (_, a, b, distance) => {
  expect(regionSeparation(a, b).distance).toBeCloseTo(distance, 12)
  expect(regionSeparation(b, a).distance).toBeCloseTo(distance, 12)
})

test('the thinnest wall lies between the two contours that come nearest, and a region without holes has none', () => {
  expect(thinnestWall({ ...plate, holes: [] })).toBeUndefined()
  expect(thinnestWall(plate)).toMatchObject({
    distance: 5,
    first: { contour: 0, segment: 3 },
    second: { contour: 1 },
  })
  const drilled = {
    ...plate,
    holes: [circle({ x: 50, y: 30 }, 10), circle({ x: 74, y: 30 }, 12), circle({ x: 20, y: 20 }, 3)],
  }
  const wall = thinnestWall(drilled)!
  expect(wall.distance).toBeCloseTo(2, 12)
  expect([wall.first.contour, wall.second.contour]).toEqual([1, 2])
  expect(wall.first.point).toEqual({ x: 60, y: 30 })
})

/** The reference: replicad-opencascadejs, which measures between true arcs. */
let reference: Reference
beforeAll(async () => {
  reference = await openReference()
}, 60_000)

test('the distance of two regions, overlapping or not, agrees with a solid modeller', () => {
  const { occ, face } = reference
  const offset = fc.double({ min: -150, max: 150, noNaN: true })
  fc.assert(
    fc.property(anyRegion, anyRegion, offset, offset, (a, b, x, y) => {
      const moved = transformRegion(b, shift(x, y))
      const ours = regionSeparation(a, moved)
      const [p, q] = [face(a), face(moved)]
      const theirs = new occ.BRepExtrema_DistShapeShape(p, q)
      expect(Math.abs(ours.distance - theirs.Value())).toBeLessThan(1e-6)
      const { first, second } = ours
      expect(Math.hypot(second.point.x - first.point.x, second.point.y - first.point.y)).toBeCloseTo(
        ours.distance,
        9,
      )
      expect(pointInRegion(a, first.point)).not.toBe('outside')
      expect(pointInRegion(moved, second.point)).not.toBe('outside')
      for (const thing of [p, q, theirs]) thing.delete()
    }),
    { numRuns: 60 },
  )
})

test('the distance of two contours follows a turn, mirror, shift and scale', () => {
  fc.assert(
    fc.property(anyRegion, anyRegion, anySimilarity, (a, b, { matrix, factor }) => {
      const far = transformContour(b.outer, shift(130, 20))
      const before = contourSeparation(a.outer, far)
      const after = contourSeparation(transformContour(a.outer, matrix), transformContour(far, matrix))
      expect(Math.abs(after.distance - before.distance * factor)).toBeLessThan(1e-7)
    }),
  )
})

test('thousands of edges are measured by looking at few of them, and give what looking at all gives', () => {
  const comb = (x: number): Contour => {
    const corners = Array.from({ length: 1500 }, (_, i) => ({
      x: x + 3 * Math.cos(i * 2.4) + (i % 2) * 9,
      y: i / 3,
    }))
    return polygon([...corners, { x: x + 40, y: 500 }, { x: x + 40, y: -1 }])
  }
  const [a, b] = [comb(0), comb(100)]
  const found = contourSeparation(a, b)
  const all = b.segments.reduce(
    (least, s) => Math.min(least, nearestOnContour(a, s.from)!.distance),
    Infinity,
  )
  const back = a.segments.reduce(
    (least, s) => Math.min(least, nearestOnContour(b, s.from)!.distance),
    Infinity,
  )
  expect(found.distance).toBeCloseTo(Math.min(all, back), 12)
})
