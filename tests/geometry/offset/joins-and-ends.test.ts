import { describe, expect, it } from 'vitest'
import { regionArea } from '../../../src/geometry/measure/area.ts'
import { boundsOfRegions } from '../../../src/geometry/measure/bounds.ts'
import { mitreReach } from '../../../src/geometry/offset/join-corner.ts'
import { offsetPath, offsetRegion } from '../../../src/geometry/offset/offset.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import { distance } from '../../../src/geometry/shape/point.ts'
import { polygon, polyline } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { arc, line } from '../../../src/geometry/shape/segment.ts'
import { expectValue } from '../expect-value.ts'

/** A triangle with a corner of `angle` degrees at the origin. */
function wedge(angle: number): Region {
  const half = (angle * Math.PI) / 360
  const far = (sign: number) => ({ x: 50 * Math.cos(half), y: sign * 50 * Math.sin(half) })
  return { outer: polygon([{ x: 0, y: 0 }, far(-1), far(1)]), holes: [] }
}

const path: Contour = polyline([
  { x: 0, y: 0 },
  { x: 30, y: 0 },
  { x: 30, y: 20 },
])

describe('joins', () => {
  it.each([150, 120, 90, 60, 45])(
    'a mitre at a corner of %d° reaches the offset over the sine of half of it',
    angle => {
      const reach = 2 / Math.sin((angle * Math.PI) / 360)
      const [grown] = expectValue(offsetRegion(wedge(angle), 2, { join: 'mitre', mitreLimit: 10 }))
      expect(grown!.outer.segments).toHaveLength(3)
      expect(boundsOfRegions([grown!]).left).toBeCloseTo(-reach, 9)
    },
  )

  it('a mitre at its very limit stands, one beyond it becomes a bevel', () => {
    // a corner of 60° reaches twice the offset
    const count = (mitreLimit: number) =>
      expectValue(offsetRegion(wedge(60), 2, { join: 'mitre', mitreLimit }))[0]!.outer.segments.length
    expect(mitreReach(Math.cos((120 * Math.PI) / 180))).toBeCloseTo(2, 12)
    expect(count(2 + 1e-9)).toBe(3)
    expect(count(2 - 1e-9)).toBe(6)
  })

  it('the limit is 4 when none is given, as in SVG', () => {
    const reach = (angle: number) =>
      -boundsOfRegions(expectValue(offsetRegion(wedge(angle), 1, { join: 'mitre' }))).left
    expect(reach(30)).toBeCloseTo(1 / Math.sin(Math.PI / 12), 9)
    expect(reach(28)).toBeLessThan(1)
  })

  it('a bevel lies at the offset times the sine of half the corner from it', () => {
    const [grown] = expectValue(offsetRegion(wedge(60), 2, { join: 'bevel' }))
    expect(boundsOfRegions([grown!]).left).toBeCloseTo(-2 * Math.sin(Math.PI / 6), 9)
  })

  it('a mitre at an arc runs on along the tangent', () => {
    // a half disc: at both ends the diameter meets the arc at 90°
    const disc: Region = {
      outer: {
        segments: [
          line({ x: -10, y: 0 }, { x: 10, y: 0 }),
          arc({ x: 10, y: 0 }, { x: -10, y: 0 }, { x: 0, y: 0 }, 1),
        ],
        closed: true,
      },
      holes: [],
    }
    const [grown] = expectValue(offsetRegion(disc, 2, { join: 'mitre' }))
    expect(regionArea(grown!)).toBeCloseTo((Math.PI * 144) / 2 + 24 * 2, 9)
    expect(grown!.outer.segments.filter(s => s.kind === 'arc')).toHaveLength(1)
  })

  it('a corner that closes toward the offset stays sharp with every join', () => {
    const notch: Region = {
      outer: polygon([
        { x: 0, y: 0 },
        { x: 20, y: 0 },
        { x: 20, y: 20 },
        { x: 10, y: 8 },
        { x: 0, y: 20 },
      ]),
      holes: [],
    }
    // where the edges y = 8 ± 1.2·(x − 10), moved outward, meet
    const tip = { x: 10, y: 8 + Math.hypot(1, 1.2) }
    for (const join of ['round', 'mitre', 'bevel'] as const) {
      const [grown] = expectValue(offsetRegion(notch, 1, { join }))
      const nearest = Math.min(...grown!.outer.segments.map(s => distance(s.from, tip)))
      expect(nearest).toBeLessThan(1e-9)
    }
  })
})

describe('ends of a band along an open path', () => {
  const length = 50
  const reach = 2
  /** One corner of 90° with a mitre: the square outside it is added, the inside counts once. */
  const straight = 2 * reach * length

  it.each([
    ['flat', straight],
    ['square', straight + 2 * 2 * reach * reach],
    ['round', straight + Math.PI * reach * reach],
  ] as const)('%s', (end, area) => {
    const [band, ...rest] = expectValue(offsetPath(path, reach, { end, join: 'mitre' }))
    expect(rest).toEqual([])
    expect(regionArea(band!)).toBeCloseTo(area, 9)
  })

  it('an end at an arc is square to its tangent', () => {
    const quarter: Contour = {
      segments: [arc({ x: 10, y: 0 }, { x: 0, y: 10 }, { x: 0, y: 0 }, 1)],
      closed: false,
    }
    const flat = expectValue(offsetPath(quarter, 2, { end: 'flat' }))
    expect(boundsOfRegions(flat)).toEqual({
      left: expect.closeTo(0, 9),
      bottom: expect.closeTo(0, 9),
      right: expect.closeTo(12, 9),
      top: expect.closeTo(12, 9),
    })
    expect(regionArea(flat[0]!)).toBeCloseTo((Math.PI * (144 - 64)) / 4, 9)
    const square = boundsOfRegions(expectValue(offsetPath(quarter, 2, { end: 'square' })))
    expect([square.left, square.bottom]).toEqual([expect.closeTo(-2, 9), expect.closeTo(-2, 9)])
  })

  it('a closed path has no ends: its band is a ring, or a solid when nothing is left inside', () => {
    const { outer } = rectangle({ left: 0, bottom: 0, right: 20, top: 10 })
    const [ring] = expectValue(offsetPath(outer, 2))
    expect(ring!.holes).toHaveLength(1)
    expect(regionArea(ring!)).toBeCloseTo(2 * 60 * 2 - 4 * 4 + Math.PI * 4, 9)
    expect(expectValue(offsetPath(outer, 5))[0]!.holes).toEqual([])
  })

  it('a path that crosses itself leaves the loop it closes as a hole', () => {
    const loop = polyline([
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 30, y: 20 },
      { x: 15, y: 20 },
      { x: 15, y: -15 },
    ])
    const [band, ...rest] = expectValue(offsetPath(loop, 1))
    expect(rest).toEqual([])
    expect(band!.holes).toHaveLength(1)
  })
})
