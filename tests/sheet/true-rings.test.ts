import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Mark } from '../../src/drawing/mark.ts'
import { pointAt } from '../../src/geometry/measure/along.ts'
import { contourBounds } from '../../src/geometry/measure/bounds.ts'
import { distance, type Point } from '../../src/geometry/shape/point.ts'
import { toPart } from '../../src/model/pose.ts'
import { modelOf, onlyPart, planOf } from '../model/model-of.ts'
import { randomPlan } from './random-plan.ts'
import { sheetsOf } from './sheets-of.ts'

type Ring = { readonly of: string; readonly centre: Point; readonly radius: number }

function ringsOf(marks: readonly Mark[]): readonly Ring[] {
  return marks.flatMap((m): Ring[] => {
    if (m.kind !== 'path' || m.role !== 'drill') return []
    const [contour] = m.contours
    const [arc] = contour!.segments
    if (arc?.kind !== 'arc' || !contour!.closed)
      throw new Error('a ring is a closed circle, or an ellipse of arcs')
    const of = m.subject ?? ''
    if (contour!.segments.length === 2) return [{ of, centre: arc.centre, radius: arc.radius }]
    // the ends of an ellipse's axes are ends or middles of its arcs
    const { left, right, bottom, top } = contourBounds(contour!)
    const centre = { x: (left + right) / 2, y: (bottom + top) / 2 }
    const far = contour!.segments.flatMap(s => [0, 0.5].map(at => distance(centre, pointAt(s, at))))
    return [{ of, centre, radius: Math.max(...far) }]
  })
}

const drilled = planOf(`    make: 2
    mirrored: true
    cuts:
      - { hole: near, at: { left: 10, bottom: 12 }, diameter: 4 }
      - { hole: stopped, at: { right: 20, top: 5 }, diameter: 6, depth: 8 }
      - { hole: from-behind, on: back, at: { left: 30, bottom: 9 }, diameter: 5 }
      - { hole: blind-behind, on: back, at: { left: 50, bottom: 9 }, diameter: 5, depth: 3 }
      - { hole: in-the-end, on: left, at: center, diameter: 5 }
      - { row: posts, at: { left: 40, bottom: 30 }, toward: right, spacing: 7.5, count: 3, diameter: 2 }
`)

/** Hand-made, on 100 x 40 x 20; the mirrored piece is 100 − x. */
const wanted: readonly Ring[] = [
  { of: 'plank.near', centre: { x: 10, y: 12 }, radius: 2 },
  { of: 'plank.stopped', centre: { x: 80, y: 35 }, radius: 3 },
  // bored from behind, it comes out on the front where the words say, not mirrored
  { of: 'plank.from-behind', centre: { x: 30, y: 9 }, radius: 2.5 },
  { of: 'plank.posts.1', centre: { x: 40, y: 30 }, radius: 1 },
  { of: 'plank.posts.2', centre: { x: 47.5, y: 30 }, radius: 1 },
  { of: 'plank.posts.3', centre: { x: 55, y: 30 }, radius: 1 },
]

test('every hole that shows on the front has its ring, and no other', () => {
  expect(ringsOf(sheetsOf(drilled)[0]!.drawings[0].marks)).toEqual(wanted)
})

test('on the template of the mirrored piece the rings are mirrored left for right', () => {
  const mirrored = wanted.map(({ centre, ...ring }) => ({
    ...ring,
    centre: { x: 100 - centre.x, y: centre.y },
  }))
  expect(ringsOf(sheetsOf(drilled)[1]!.drawings[0].marks)).toEqual(mirrored)
})

test('the rings of any part stand where its holes are in the wood, in both hands and in every arrangement', () => {
  fc.assert(
    fc.property(randomPlan, text => {
      const part = onlyPart(modelOf(text))
      const [drawn, mirrored] = part.pieces
      sheetsOf(text).forEach((sheet, i) => {
        const { solid } = [drawn!, mirrored!][i]!
        const holes = solid.features
          .filter(({ face }) => face === 'front')
          .flatMap(({ id, shape }) => {
            if (shape.kind === 'bore') {
              const radius = shape.diameter.mm / 2 / Math.cos(shape.lean?.angle ?? 0)
              return [{ id, centre: shape.centre, radius }]
            }
            // the hole that the saw's blade goes in by
            if (shape.kind !== 'cut-out' || shape.entry === undefined) return []
            const { centre, diameter } = shape.entry
            return [{ id: `${id}.entry`, centre, radius: diameter / 2 }]
          })
        for (const { marks } of sheet.drawings) {
          const rings = ringsOf(marks)
          expect(rings).toHaveLength(holes.length)
          for (const { id, centre, radius } of holes) {
            const { x, y } = toPart(solid.faces.front.pose, centre)
            const ring = rings.find(r => r.of === `${part.id}.${id}`)!
            expect(ring.centre.x).toBeCloseTo(x, 9)
            expect(ring.centre.y).toBeCloseTo(y, 9)
            expect(ring.radius).toBeCloseTo(radius, 9)
          }
        }
      })
    }),
    { numRuns: 30 },
  )
})

test('the cross stops short of the centre and reaches out of the ring', () => {
  const marks = sheetsOf(drilled)[0]!.drawings[0].marks.filter(m => m.subject === 'plank.near')
  const cross = marks.find(m => m.kind === 'path' && m.role === 'thin')
  if (cross?.kind !== 'path') throw new Error('no cross')
  const away = (p: Point) => Math.hypot(p.x - 10, p.y - 12)
  expect(cross.contours).toHaveLength(4)
  for (const { segments } of cross.contours) {
    const [near, far] = [segments[0]!.from, segments[0]!.to].map(away).toSorted((a, b) => a - b)
    expect(near).toBeGreaterThan(0.5)
    expect(near).toBeLessThan(2)
    expect(far).toBeGreaterThan(2)
  }
})

/** Common practice, no source: with a fence nothing is pricked, freehand the centre is. */
test('a hole that is bored freehand has a dot to prick, a hole of a row has none', () => {
  const dots = sheetsOf(drilled)[0]!.drawings[0].marks.filter(m => m.kind === 'fill' && m.layer === 'drill')
  expect(dots.map(m => m.subject)).toEqual(['plank.near', 'plank.stopped', 'plank.from-behind'])
})
