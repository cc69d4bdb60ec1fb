import { expect, test } from 'vitest'
import { textBox } from '../../src/drawing/text-box.ts'
import { pointInRegion } from '../../src/geometry/measure/inside.ts'
import type { Region } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { rectangle } from '../../src/geometry/shape/rectangle.ts'
import { slot } from '../../src/geometry/shape/slot.ts'
import { hatch } from '../../src/sheet/template/hatch.ts'
import { planOf, planWithCuts } from '../model/model-of.ts'
import { firstDrawing, fonts, segmentsOf, textsOf } from './sheets-of.ts'

const along = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
})

const plate: Region = {
  outer: rectangle({ left: 0, bottom: 0, right: 40, top: 25 }).outer,
  holes: [rectangle({ left: 10, bottom: 5, right: 20, top: 15 }).outer],
}

test.each([
  ['a rectangle', rectangle({ left: 3, bottom: -2, right: 33, top: 6 })],
  ['round ends', slot({ x: 0, y: 0 }, { x: 25, y: 0 }, 8)],
  ['a plate with a hole', plate],
])('hatching of %s lies inside it and nowhere else', (_, region) => {
  const lines = hatch([region], [])
  expect(lines.length).toBeGreaterThan(5)
  for (const [a, b] of lines) {
    for (const t of [0.01, 0.25, 0.5, 0.75, 0.99])
      expect(pointInRegion(region, along(a, b, t))).toBe('inside')
    expect(Math.atan2(b.y - a.y, b.x - a.x)).toBeCloseTo(Math.PI / 4, 9)
  }
})

test('hatching covers: no place of the region is farther than one pitch from a line', () => {
  const lines = hatch([plate], [])
  for (let x = 1; x < 40; x += 1.7) {
    for (let y = 1; y < 25; y += 1.7) {
      if (pointInRegion(plate, { x, y }) !== 'inside') continue
      const nearest = Math.min(...lines.map(([a]) => Math.abs(x - y - (a.x - a.y)) / Math.SQRT2))
      expect(nearest).toBeLessThanOrEqual(1 + 1e-9)
    }
  }
})

test('hatching spares boxes', () => {
  const box = { left: 5, bottom: 2, right: 9, top: 8 }
  for (const [a, b] of hatch([plate], [box])) {
    for (let i = 0; i <= 50; i++) {
      const { x, y } = along(a, b, i / 50)
      expect(x > box.left && x < box.right && y > box.bottom && y < box.top).toBe(false)
    }
  }
})

const hatched = (text: string) =>
  segmentsOf(firstDrawing(text).marks.filter(m => m.subject === 'waste')).map(s => [s.from, s.to] as const)

test('slots, mortises and notches are hatched, holes are not', () => {
  const cuts = [
    'slot: a, at: { left: 10, bottom: 20 }, size: 20 x 8',
    'slot: b, at: { left: 40, bottom: 20 }, size: 20 x 8, depth: 4, ends: round',
    'notch: c, on: bottom, at: { left: 70 }, size: 20 x 8',
  ]
  for (const cut of cuts) expect(hatched(planWithCuts([cut])).length).toBeGreaterThan(3)
  expect(hatched(planWithCuts(['hole: pin, at: center, diameter: 20']))).toEqual([])
})

test('a notch at a rounded corner is hatched on the wood alone', () => {
  const text = planOf(
    '    corners: 10\n    cuts:\n      - { notch: step, on: bottom, at: { left: 0 }, size: 20 x 15 }\n',
  )
  // the corner's centre is at (10, 10)
  for (const [a, b] of hatched(text)) {
    for (const p of [a, b]) {
      if (p.x < 10 && p.y < 10) expect(Math.hypot(p.x - 10, p.y - 10)).toBeLessThan(10 + 0.03)
    }
  }
})

test('hatching spares the letter in the waste', () => {
  const drawing = firstDrawing(planWithCuts(['slot: mouth, at: center, size: 40 x 16']))
  const letter = textsOf(drawing.marks).find(t => t.subject === 'mouth')!
  const box = textBox(fonts, letter)
  expect((box.left + box.right) / 2).toBeCloseTo(50, 6)
  for (const { from, to } of segmentsOf(drawing.marks.filter(m => m.subject === 'waste'))) {
    for (let i = 0; i <= 40; i++) {
      const { x, y } = along(from, to, i / 40)
      expect(x > box.left && x < box.right && y > box.bottom && y < box.top).toBe(false)
    }
  }
})
