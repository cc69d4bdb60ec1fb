import { expect, test } from 'vitest'
import { contourBounds, joinBounds, noBounds } from '../../src/geometry/measure/bounds.ts'
import { nearestOnContour } from '../../src/geometry/measure/nearest.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { layOut } from '../../src/text/lay-out.ts'
import { letterContours } from '../../src/text/letter-contours.ts'
import { type Outline, placeOutline } from '../../src/text/outline.ts'
import { bundledFont } from './bundled-font.ts'

const font = bundledFont()
const words = ['Nº 2 & Åqg8§ — ½']

/** Points of a letter's own curves, by the definition of a Bézier curve, thick enough to meet it where it strays most. */
function pointsOn(outline: Outline): readonly Point[] {
  const points: Point[] = []
  let at: Point = { x: 0, y: 0 }
  for (const step of outline) {
    if (step.kind === 'close') continue
    const controls =
      step.kind === 'quadratic' ? [step.control] : step.kind === 'cubic' ? [step.control1, step.control2] : []
    if (step.kind !== 'move') {
      for (let i = 0; i <= 16; i++) points.push(bezier([at, ...controls, step.to], i / 16))
    }
    at = step.to
  }
  return points
}

function bezier(points: readonly Point[], t: number): Point {
  if (points.length === 1) return points[0]!
  const next = points.slice(1).map((q, i) => ({
    x: points[i]!.x + t * (q.x - points[i]!.x),
    y: points[i]!.y + t * (q.y - points[i]!.y),
  }))
  return bezier(next, t)
}

const away = (contours: readonly Contour[], p: Point) =>
  Math.min(...contours.map(c => nearestOnContour(c, p)?.distance ?? Infinity))

test.each([2.5, 200])(
  'letters %d mm high keep to the font within the deviation that is asked for',
  height => {
    const laid = layOut(font, words, height)
    for (const deviation of [0.05, 0.0005]) {
      const worst = laid.glyphs.map(placed => {
        const contours = letterContours({ ...laid, glyphs: [placed] }, deviation)
        const own = pointsOn(placeOutline(placed.glyph.outline, laid.size, placed.x, 0))
        return own.reduce((most, p) => Math.max(most, away(contours, p)), 0)
      })
      // between the places where the program measures, a piece strays at most by a twentieth more
      expect(Math.max(...worst)).toBeLessThan(deviation * 1.05)
    }
  },
)

test('they are closed, every edge begins where the one before ends, and they fill the box of the ink', () => {
  const laid = layOut(font, words, 10)
  const contours = letterContours(laid, 0.0005)
  for (const { segments, closed } of contours) {
    expect(closed).toBe(true)
    expect(segments.every((s, i) => s.to === segments[(i + 1) % segments.length]!.from)).toBe(true)
  }
  const box = contours.map(contourBounds).reduce(joinBounds, noBounds)
  for (const side of ['left', 'right', 'bottom', 'top'] as const)
    expect(box[side]).toBeCloseTo(laid.box[side], 3)
})

test('a blank has no outline', () => {
  expect(letterContours(layOut(font, ['   '], 10), 0.0005)).toEqual([])
})
