import fc from 'fast-check'
import { expect, test } from 'vitest'
import { arcByBend, arcThrough } from '../../../src/geometry/construct/arc-from.ts'
import { pointAt } from '../../../src/geometry/measure/along.ts'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { nearestOnRegion } from '../../../src/geometry/measure/nearest.ts'
import { protrusion } from '../../../src/geometry/measure/protrusion.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { point } from '../../../src/geometry/shape/point.ts'
import { rectangle, rectangleWithCorners } from '../../../src/geometry/shape/rectangle.ts'
import { type Arc, line } from '../../../src/geometry/shape/segment.ts'

/** What an arc and its chord go round. */
function capOf(bow: Arc): Region {
  return { outer: { segments: [line(bow.to, bow.from), bow], closed: true }, holes: [] }
}

test('a shallow arc well inside a board does not stick out, however far its disc reaches', () => {
  const board = rectangle({ left: 0, bottom: 0, right: 400, top: 300 })
  const bow = arcThrough(point(250, 160), point(200, 163), point(150, 160))
  expect(bow.ok && protrusion(capOf(bow.value), board)).toBeUndefined()
})

test('what bulges out of a board sticks out by its crown, though both its ends lie inside', () => {
  const board = rectangle({ left: 0, bottom: 0, right: 400, top: 300 })
  const bow = arcThrough(point(250, 298), point(200, 303), point(150, 298))
  const found = bow.ok ? protrusion(capOf(bow.value), board) : undefined
  expect(found?.by).toBeCloseTo(3, 9)
})

test('no point of an arc sticks out farther than is said, and one does as far', () => {
  const place = fc.double({ min: -30, max: 130, noNaN: true })
  const bends = fc.double({ min: 0.05, max: 6, noNaN: true }).chain(size => fc.constantFrom(size, -size))
  const corners = fc.constantFrom(0, 8, 20)
  fc.assert(
    fc.property(place, place, place, place, bends, corners, (x0, y0, x1, y1, bend, radius) => {
      const bow = arcByBend(point(x0, y0), point(x1, y1), bend)
      if (!bow.ok) return
      const box = { left: 0, bottom: 0, right: 100, top: 70 }
      const corner = radius === 0 ? 'square' : ({ radius } as const)
      const made = rectangleWithCorners(box, {
        'bottom-left': corner,
        'bottom-right': corner,
        'top-right': corner,
        'top-left': { chamfer: 11 },
      })
      expect(made.ok).toBe(true)
      const board = (made as { readonly value: Region }).value
      const steps = 4000
      const sampled = Array.from({ length: steps + 1 }, (_, i) => {
        const p = pointAt(bow.value, i / steps)
        return pointInRegion(board, p) === 'outside' ? nearestOnRegion(board, p)!.distance : 0
      })
      const most = Math.max(...sampled)
      const by = protrusion(capOf(bow.value), board)?.by ?? 0
      expect(by).toBeGreaterThanOrEqual(most - 2e-6)
      // between two samples the distance grows by at most half of the way from one to the other
      const step = (bow.value.radius * Math.abs(bend)) / steps
      expect(by).toBeLessThanOrEqual(most + step / 2 + 2e-6)
    }),
    { numRuns: 300 },
  )
})
