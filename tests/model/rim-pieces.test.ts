import { expect, test } from 'vitest'
import { regionArea } from '../../src/geometry/measure/area.ts'
import type { Chamfer } from '../../src/model/feature.ts'
import { type RimPiece, rimPieces } from '../../src/model/inside/rim-pieces.ts'
import { modelOf, onlyPart } from './model-of.ts'

const strips = (shape: string): readonly Chamfer[] => {
  const text = `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  plate:\n    thickness: 20\n${shape}    cuts: [{ chamfer: c, on: front, edges: all, size: 4 }]\n`
  return onlyPart(modelOf(text)).drawn.features.map(({ shape }) => shape as Chamfer)
}

/** Source: Gauss's area formula, over the four corners in order. */
function area({ inner: [a, b], outer: [c, d] }: RimPiece): number {
  const corners = [a, b, d, c]
  return Math.abs(
    corners.reduce((sum, p, i) => {
      const q = corners[(i + 1) % corners.length]!
      return sum + p.x * q.y - q.x * p.y
    }, 0) / 2,
  )
}

/** The pieces fill the strip: no overlap, no gap. Arcs are cut off by their chords, 0.005 mm at most. */
test.each([
  ['a rectangle', '    size: 100 x 40\n', 4, 1e-9],
  ['one with round corners', '    size: 100 x 40\n    corners: 10\n', 0, 2],
  ['one with chamfered corners', '    size: 100 x 40\n    corners: { top-left: { chamfer: 15 } }\n', 5, 1e-9],
  [
    'an inner corner',
    '    outline: [{ to: [0, 0] }, { to: [80, 0] }, { to: [80, 30] }, { to: [40, 30] }, { to: [40, 60] }, { to: [0, 60] }]\n',
    0,
    2,
  ],
  ['a disc', '    round: 90\n', 0, 2],
  ['a ring', '    round: 90\n    inside: 30\n', 0, 2],
])('%s', (_, shape, count, within) => {
  const pieces = strips(shape).flatMap(({ region }) => rimPieces(region, 4))
  if (count > 0) expect(pieces).toHaveLength(count)
  const whole = strips(shape).reduce((sum, { region }) => sum + regionArea(region), 0)
  const filled = pieces.reduce((sum, piece) => sum + area(piece), 0)
  expect(Math.abs(filled - whole)).toBeLessThan(within)
  for (const { inner, outer } of pieces)
    inner.forEach((p, i) => {
      const q = outer[i]!
      // square to the edge, or farther to the corner
      expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeGreaterThan(4 - 1e-6)
    })
})
