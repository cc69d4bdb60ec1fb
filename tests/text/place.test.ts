import { expect, test } from 'vitest'
import { apply } from '../../src/geometry/shape/matrix.ts'
import { point } from '../../src/geometry/shape/point.ts'
import { layOut } from '../../src/text/lay-out.ts'
import { textMatrix } from '../../src/text/place.ts'
import { bundledFont } from './bundled-font.ts'

const laid = layOut(bundledFont(), ['fence'], 3.5)
const at = point(10, 20)

test.each([
  ['start', 10],
  ['middle', 10 - laid.width / 2],
  ['end', 10 - laid.width],
] as const)('a line aligned by its %s starts there', (align, x) => {
  const start = apply(textMatrix(laid, { at, align, angle: 0 }), { x: 0, y: 0 })
  expect(start.x).toBeCloseTo(x, 9)
  expect(start.y).toBe(20)
})

test('a line turned by a quarter runs straight up, without a trace of a slope', () => {
  expect(textMatrix(laid, { at, align: 'start', angle: Math.PI / 2 })).toEqual({
    a: 0,
    b: 1,
    c: -1,
    d: 0,
    e: 10,
    f: 20,
  })
})

test('a positive angle turns counter-clockwise', () => {
  const end = apply(textMatrix(laid, { at, align: 'start', angle: Math.PI / 6 }), { x: laid.width, y: 0 })
  expect(end.x - 10).toBeCloseTo(laid.width * Math.cos(Math.PI / 6), 9)
  expect(end.y - 20).toBeCloseTo(laid.width / 2, 9)
})
