import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Compensated, compensateKerf } from '../../src/drawing/compensate-kerf.ts'
import type { Drawing } from '../../src/drawing/drawing.ts'
import type { LineRole } from '../../src/drawing/line-role.ts'
import type { Mark } from '../../src/drawing/mark.ts'
import { shapesOf } from '../../src/drawing/shapes.ts'
import { signedArea } from '../../src/geometry/measure/area.ts'
import { contourBounds } from '../../src/geometry/measure/bounds.ts'
import { contourLength } from '../../src/geometry/measure/length.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import { point } from '../../src/geometry/shape/point.ts'
import { polygon, polyline } from '../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../src/geometry/shape/rectangle.ts'
import { slot } from '../../src/geometry/shape/slot.ts'

function mark(subject: string, role: LineRole, ...contours: readonly Contour[]): Mark {
  return { layer: role === 'drill' ? 'drill' : 'cut', subject, kind: 'path', role, contours }
}

function drawing(...marks: readonly Mark[]): Drawing {
  return {
    id: 'bracket-template',
    caption: { plan: 'Pier', sheet: 'template' },
    marks,
    bounds: { left: -5, bottom: -5, right: 105, top: 65 },
    keepWhole: [],
  }
}

const board = rectangle({ left: 0, bottom: 0, right: 100, top: 60 }).outer

function compensated(kerf: number, ...marks: readonly Mark[]): Compensated {
  const outcome = compensateKerf(drawing(...marks), kerf)
  if (!outcome.ok) throw new Error(outcome.fault.reason)
  return outcome.value
}

function areas({ drawing: { marks } }: Compensated): readonly number[] {
  return marks.flatMap(shapesOf).map(shape => Math.abs(signedArea(shape)))
}

describe('the shapes of a drawing, moved by half the kerf', () => {
  test('are an outline that is larger all round, its corners round, and smaller holes', () => {
    const made = compensated(
      0.4,
      mark('board', 'cut', board),
      mark('pin', 'drill', circle(point(20, 20), 5)),
      mark('slit', 'cut', slot(point(50, 30), point(80, 30), 8).outer),
    )
    expect(made.tooNarrow).toEqual([])
    const [outline, pin, slit] = areas(made)
    // Steiner's formula for a convex shape: A + P d + π d²
    expect(outline).toBeCloseTo(100 * 60 + 320 * 0.2 + Math.PI * 0.2 ** 2, 6)
    expect(pin).toBeCloseTo(Math.PI * 4.8 ** 2, 6)
    expect(slit).toBeCloseTo(30 * 7.6 + Math.PI * 3.8 ** 2, 6)
    expect(made.drawing.bounds).toEqual({ left: -5.2, bottom: -5.2, right: 105.2, top: 65.2 })
  })

  test('keep their marks, roles and subjects, and a ring stays a whole circle about its centre', () => {
    const made = compensated(0.3, mark('board', 'cut', board), mark('pin', 'drill', circle(point(20, 20), 5)))
    const pin = made.drawing.marks[1]!
    expect(pin).toMatchObject({ subject: 'pin', role: 'drill', layer: 'drill' })
    const [ring] = shapesOf(pin)
    expect(ring!.segments).toHaveLength(2)
    for (const s of ring!.segments) {
      expect(s).toMatchObject({ kind: 'arc', centre: { x: 20, y: 20 } })
      expect(s.kind === 'arc' && s.radius).toBeCloseTo(4.85, 9)
    }
  })

  test('are holes wherever they lie in a larger one, also one in another and one over the edge', () => {
    const made = compensated(
      1,
      mark('board', 'cut', board),
      mark('counterbore', 'drill', circle(point(30, 30), 9), circle(point(30, 30), 4)),
      mark('over-the-edge', 'drill', circle(point(100.5, 30), 6)),
    )
    const radii = areas(made)
      .slice(1)
      .map(area => Math.sqrt(area / Math.PI))
    expect(radii.map(r => Number(r.toFixed(6)))).toEqual([8.5, 3.5, 5.5])
  })

  test('are holes where they are bored, on a strip without an outline too', () => {
    const [alone] = areas(compensated(1, mark('pin', 'drill', circle(point(20, 20), 5))))
    expect(alone).toBeCloseTo(Math.PI * 4.5 ** 2, 6)
  })

  test('are told apart whatever their direction and order', () => {
    const backwards = polygon([point(0, 0), point(0, 60), point(100, 60), point(100, 0)])
    const made = compensated(
      1,
      mark('pin', 'drill', circle(point(20, 20), 5)),
      mark('board', 'cut', backwards),
    )
    const [pin, outline] = areas(made)
    expect(pin).toBeCloseTo(Math.PI * 4.5 ** 2, 6)
    expect(outline).toBeCloseTo(6000 + 160 + Math.PI / 4, 6)
  })

  test('are left alone when they are not cut: crosses, rough-cut lines, fills and words', () => {
    const others: readonly Mark[] = [
      mark('around', 'rough-cut', circle(point(50, 30), 80)),
      mark('cross', 'thin', polyline([point(10, 20), point(30, 20)])),
      mark('open', 'cut', polyline([point(10, 20), point(30, 20)])),
      { layer: 'drill', kind: 'fill', regions: [{ outer: circle(point(20, 20), 0.2), holes: [] }] },
    ]
    const made = compensated(1, mark('board', 'cut', board), ...others)
    expect(made.drawing.marks.slice(1)).toEqual(others)
  })

  test('are the same shapes without a kerf', () => {
    const before = drawing(mark('board', 'cut', board), mark('pin', 'drill', circle(point(20, 20), 5)))
    expect(compensateKerf(before, 0)).toEqual({ ok: true, value: { drawing: before, tooNarrow: [] } })
  })
})

test('what the kerf does not go into as it is, is named: a hole that vanishes or falls apart, a slit that closes', () => {
  const waist = polygon(
    [10, 20, 30, 40]
      .flatMap(x => [point(x, x === 20 || x === 30 ? 29.9 : 20)])
      .concat([40, 30, 20, 10].map(x => point(x, x === 20 || x === 30 ? 30.1 : 40))),
  )
  const made = compensated(
    0.5,
    mark('board', 'cut', board),
    mark('fine-hole', 'drill', circle(point(70, 30), 0.2)),
    mark('waist', 'cut', waist),
    mark('wide-hole', 'drill', circle(point(85, 30), 5)),
  )
  expect(made.tooNarrow).toEqual(['fine-hole', 'waist'])
  const mouth = polygon([
    ...[point(0, 0), point(100, 0), point(100, 60), point(50.1, 60), point(50.1, 50), point(60, 50)],
    ...[point(60, 30), point(40, 30), point(40, 50), point(49.9, 50), point(49.9, 60), point(0, 60)],
  ])
  expect(compensated(0.5, mark('keyhole', 'cut', mouth)).tooNarrow).toEqual(['keyhole'])
  expect(compensated(0.1, mark('keyhole', 'cut', mouth)).tooNarrow).toEqual([])
})

test.each([-0.1, Number.NaN, Infinity])('a kerf of %d mm is a fault', kerf => {
  const outcome = compensateKerf(drawing(mark('board', 'cut', board)), kerf)
  expect(outcome).toMatchObject({ ok: false, fault: { reason: 'kerf' } })
})

test('any convex outline is moved by the same distance all round: its length grows by π times the kerf', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 4, noNaN: true }),
      fc.uniqueArray(fc.integer({ min: 0, max: 359 }), { minLength: 3, maxLength: 12 }),
      (kerf, degrees) => {
        const angles = degrees.sort((a, b) => a - b).map(a => (a * Math.PI) / 180)
        const outline = polygon(angles.map(a => point(40 * Math.cos(a), 40 * Math.sin(a))))
        const [shape] = compensated(kerf, mark('part', 'cut', outline)).drawing.marks.flatMap(shapesOf)
        expect(contourLength(shape!)).toBeCloseTo(contourLength(outline) + Math.PI * kerf, 5)
        const [a, b] = [contourBounds(outline), contourBounds(shape!)]
        expect(b.right - a.right).toBeCloseTo(kerf / 2, 5)
        expect(a.bottom - b.bottom).toBeCloseTo(kerf / 2, 5)
      },
    ),
    { numRuns: 100 },
  )
})
