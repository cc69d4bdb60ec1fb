import { expect, test } from 'vitest'
import { holeChord, holeCircle, regularPolygon } from '../../../src/geometry/construct/regular.ts'
import { signedArea } from '../../../src/geometry/measure/area.ts'
import { regionBounds } from '../../../src/geometry/measure/bounds.ts'
import { segmentLength } from '../../../src/geometry/measure/length.ts'

/** Chord = diameter × sin(180°/N): a published chart of hole circles, to four places. */
test.each([
  [3, '0.8660'],
  [4, '0.7071'],
  [5, '0.5878'],
  [6, '0.5000'],
  [7, '0.4339'],
  [8, '0.3827'],
  [9, '0.3420'],
  [10, '0.3090'],
  [11, '0.2817'],
  [12, '0.2588'],
  [24, '0.1305'],
  [36, '0.0872'],
])('neighbours of %d holes on a circle of diameter 1 are %s apart', (count, chord) => {
  expect(holeChord(1, count).toFixed(4)).toBe(chord)
  const holes = holeCircle({ x: 5, y: -2 }, 1, count, 0.3)
  holes.forEach((p, i) => {
    const q = holes[(i + 1) % count]!
    expect(Math.hypot(q.x - p.x, q.y - p.y)).toBeCloseTo(holeChord(1, count), 12)
  })
})

test('four holes stand exactly on the axes, and one has no neighbour', () => {
  expect(holeCircle({ x: 0, y: 0 }, 20, 4)).toEqual([
    { x: 10, y: 0 },
    { x: 0, y: 10 },
    { x: -10, y: 0 },
    { x: 0, y: -10 },
  ])
  expect(holeChord(20, 1)).toBe(0)
  expect(() => holeCircle({ x: 0, y: 0 }, 20, 0)).toThrow(RangeError)
  expect(() => holeCircle({ x: 0, y: 0 }, 0, 3)).toThrow(RangeError)
})

test('a regular polygon is sized by its corners, across its flats or by its side', () => {
  const centre = { x: 1, y: 1 }
  const hexagon = regularPolygon(centre, 6, { acrossFlats: 17 })
  const { bottom, top } = regionBounds({ outer: hexagon, holes: [] })
  expect(top - bottom).toBeCloseTo(17, 12)
  // closed formula: n/4·side²·cot(π/n)
  const octagon = regularPolygon(centre, 8, { side: 3 })
  expect(signedArea(octagon)).toBeCloseTo(((8 / 4) * 9) / Math.tan(Math.PI / 8), 10)
  for (const s of octagon.segments) expect(segmentLength(s)).toBeCloseTo(3, 12)
  const square = regularPolygon(centre, 4, { corner: Math.SQRT2 }, Math.PI / 4)
  expect(signedArea(square)).toBeCloseTo(4, 12)
  expect(() => regularPolygon(centre, 2, { side: 1 })).toThrow(RangeError)
})
