import { expect, test } from 'vitest'
import { rectangle, rectangleWithCorners } from '../../../src/geometry/shape/rectangle.ts'

const bounds = { left: 0, bottom: 0, right: 6, top: 4 }

test('a rectangle runs counter-clockwise from its lower left corner and names its edges', () => {
  const { segments, closed } = rectangle(bounds).outer
  expect(closed).toBe(true)
  expect(segments.map(s => s.tag)).toEqual(['bottom', 'right', 'top', 'left'])
  expect(segments.map(s => s.from)).toEqual([
    { x: 0, y: 0 },
    { x: 6, y: 0 },
    { x: 6, y: 4 },
    { x: 0, y: 4 },
  ])
})

test('each corner is square, rounded or chamfered, and neighbours share their end point', () => {
  const made = rectangleWithCorners(bounds, { 'bottom-left': { radius: 1 }, 'top-right': { chamfer: 0.5 } })
  if (!made.ok) throw new Error(made.fault.reason)
  const { segments } = made.value.outer
  expect(segments.map(s => s.tag)).toEqual(['bottom', 'right', 'top-right', 'top', 'left', 'bottom-left'])
  segments.forEach((s, i) => {
    expect(s.to).toBe(segments[(i + 1) % segments.length]!.from)
  })
  expect(segments[2]).toMatchObject({ kind: 'line', from: { x: 6, y: 3.5 }, to: { x: 5.5, y: 4 } })
  expect(segments[5]).toMatchObject({ kind: 'arc', centre: { x: 1, y: 1 }, radius: 1, turn: 1 })
})

test('a side that its corners use up leaves no edge', () => {
  const round = { radius: 2 }
  const made = rectangleWithCorners(bounds, {
    'bottom-left': round,
    'bottom-right': round,
    'top-right': round,
    'top-left': round,
  })
  if (!made.ok) throw new Error(made.fault.reason)
  const { segments } = made.value.outer
  expect(segments.map(s => s.tag)).toEqual([
    'bottom',
    'bottom-right',
    'top-right',
    'top',
    'top-left',
    'bottom-left',
  ])
  segments.forEach((s, i) => {
    expect(s.to).toBe(segments[(i + 1) % segments.length]!.from)
  })
})

test('corners that need more than the side has are a fault that names the side', () => {
  const made = rectangleWithCorners(bounds, { 'bottom-left': { radius: 3 }, 'top-left': { chamfer: 2 } })
  expect(made).toMatchObject({
    ok: false,
    fault: { reason: 'corners-meet', facts: { side: 'left', length: 4, wanted: 5 } },
  })
  for (const radius of [0, -1, Number.NaN]) {
    expect(rectangleWithCorners(bounds, { 'top-left': { radius } })).toMatchObject({
      ok: false,
      fault: { reason: 'corner-size' },
    })
  }
})
