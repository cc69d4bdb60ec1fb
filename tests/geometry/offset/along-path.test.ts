import { describe, expect, it } from 'vitest'
import { regionArea } from '../../../src/geometry/measure/area.ts'
import { ringAlongPath, slotAlongPath } from '../../../src/geometry/offset/along-path.ts'
import type { Contour } from '../../../src/geometry/shape/contour.ts'
import { polyline } from '../../../src/geometry/shape/polygon.ts'
import { arc, line } from '../../../src/geometry/shape/segment.ts'
import { expectValue } from '../expect-value.ts'

const straight = polyline([
  { x: 0, y: 0 },
  { x: 40, y: 0 },
])

/** 20 straight, a quarter turn of radius 10, 15 straight; tangent all along. */
const bent: Contour = {
  segments: [
    line({ x: 0, y: 0 }, { x: 20, y: 0 }, 'in'),
    arc({ x: 20, y: 0 }, { x: 30, y: 10 }, { x: 20, y: 10 }, 1, 'bend'),
    line({ x: 30, y: 10 }, { x: 30, y: 25 }, 'out'),
  ],
  closed: false,
}
const bentLength = 20 + 5 * Math.PI + 15

describe('a slot along a path', () => {
  it('40 long between centres and 20 wide has 1114.1593 mm² (Green’s theorem)', () => {
    const [slot] = expectValue(slotAlongPath(straight, 20))
    expect(regionArea(slot!)).toBeCloseTo(1114.1593, 4)
    expect(slot!.outer.segments).toHaveLength(4)
  })

  it('along a smooth path is as large as its length times its width and a disc (Pappus)', () => {
    const [slot] = expectValue(slotAlongPath(bent, 6))
    expect(regionArea(slot!)).toBeCloseTo(bentLength * 6 + Math.PI * 9, 9)
    const [flat] = expectValue(slotAlongPath(bent, 6, { end: 'flat' }))
    expect(regionArea(flat!)).toBeCloseTo(bentLength * 6, 9)
  })

  it('keeps arcs and names', () => {
    const [slot] = expectValue(slotAlongPath(bent, 6, { joinTag: 'end' }))
    const radii = slot!.outer.segments.flatMap(s => (s.kind === 'arc' && s.tag === 'bend' ? [s.radius] : []))
    expect(radii.sort((a, b) => a - b)).toEqual([7, 13])
    expect(slot!.outer.segments.filter(s => s.tag === 'end')).toHaveLength(2)
  })
})

describe('a ring along a path', () => {
  it('is what the wide slot has more than the narrow one', () => {
    const [ring, ...rest] = expectValue(ringAlongPath(bent, 6, 2))
    expect(rest).toEqual([])
    expect(ring!.holes).toHaveLength(1)
    expect(regionArea(ring!)).toBeCloseTo(bentLength * 4 + Math.PI * (25 - 9), 6)
  })

  it('has the width of its rim at square ends, too', () => {
    const [ring] = expectValue(ringAlongPath(straight, 6, 2, { end: 'square' }))
    expect(regionArea(ring!)).toBeCloseTo(50 * 10 - 46 * 6, 6)
  })

  it('is open at flat ends: two rails', () => {
    const rails = expectValue(ringAlongPath(straight, 6, 2, { end: 'flat' }))
    expect(rails.map(regionArea)).toEqual([expect.closeTo(80, 6), expect.closeTo(80, 6)])
  })

  it('without a rim is a fault', () => {
    expect(ringAlongPath(straight, 6, 0)).toMatchObject({ ok: false, fault: { reason: 'rim' } })
    expect(ringAlongPath(straight, 0, 2)).toMatchObject({ ok: false, fault: { reason: 'distance' } })
  })
})
