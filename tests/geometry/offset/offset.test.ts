import { describe, expect, it } from 'vitest'
import { regionArea } from '../../../src/geometry/measure/area.ts'
import { offsetPath, offsetRegion, offsetRegions } from '../../../src/geometry/offset/offset.ts'
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { polygon, polyline } from '../../../src/geometry/shape/polygon.ts'
import { rectangle } from '../../../src/geometry/shape/rectangle.ts'
import { reverseContour } from '../../../src/geometry/shape/reverse.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import { expectValue } from '../expect-value.ts'
import { bulgeChain } from '../generate/bulge.ts'
import { middleOf } from './offset-laws.ts'

const corners = (points: readonly (readonly [number, number])[]) => points.map(([x, y]) => ({ x, y }))

const plank = rectangle({ left: 0, bottom: 0, right: 100, top: 60 })

/** Two squares of 20 joined by a neck 4 wide and 10 long. */
const dumbbell: Region = {
  outer: polygon(
    corners([
      [0, 0],
      [20, 0],
      [20, 8],
      [30, 8],
      [30, 0],
      [50, 0],
      [50, 20],
      [30, 20],
      [30, 12],
      [20, 12],
      [20, 20],
      [0, 20],
    ]),
  ),
  holes: [],
}

describe('what an offset does to a shape', () => {
  it('a neck narrower than twice the distance parts a region in two', () => {
    // the square shrunk, and what the arcs about the neck's corners leave between them
    const tip = 4 - 2 * (0.5 * (6.25 * (Math.PI / 2 - Math.asin(0.6)) - 3))
    const parts = expectValue(offsetRegion(dumbbell, -2.5))
    expect(parts.map(regionArea)).toEqual([expect.closeTo(225 + tip, 9), expect.closeTo(225 + tip, 9)])
  })

  it('a neck just twice the distance wide is gone', () => {
    const parts = expectValue(offsetRegion(dumbbell, -2))
    expect(parts).toHaveLength(2)
    for (const part of parts) expect(regionArea(part)).toBeCloseTo(256 + 8 - 2 * Math.PI, 5)
  })

  it('a region vanishes at half its width and beyond', () => {
    for (const delta of [-30, -30.0001, -31, -50, -1000]) {
      expect(expectValue(offsetRegion(plank, delta))).toEqual([])
    }
    expect(expectValue(offsetRegion({ outer: circle({ x: 3, y: 4 }, 5), holes: [] }, -5))).toEqual([])
  })

  it('just short of half its width a strip is left', () => {
    const [strip, ...rest] = expectValue(offsetRegion(plank, -29.999))
    expect(rest).toEqual([])
    expect(regionArea(strip!)).toBeCloseTo(40.002 * 0.002, 9)
  })

  it('rounded corners smaller than the distance leave sharp ones', () => {
    const bend = Math.tan(Math.PI / 8)
    const outline = bulgeChain(
      corners([
        [3, 0],
        [97, 0],
        [100, 3],
        [100, 57],
        [97, 60],
        [3, 60],
        [0, 57],
        [0, 3],
      ]),
      [0, bend, 0, bend, 0, bend, 0, bend],
      true,
    )
    for (const delta of [-3, -5, -8]) {
      const [inner] = expectValue(
        offsetRegion({ outer: { segments: outline, closed: true }, holes: [] }, delta),
      )
      expect(inner!.outer.segments.map(s => s.kind)).toEqual(['line', 'line', 'line', 'line'])
      expect(regionArea(inner!)).toBeCloseTo((100 + 2 * delta) * (60 + 2 * delta), 6)
    }
  })

  it('a hole shrinks as its region grows, and is gone when it has no width left', () => {
    const plate: Region = {
      ...plank,
      holes: [circle({ x: 30, y: 30 }, 10), slot({ x: 60, y: 30 }, { x: 80, y: 30 }, 8).outer],
    }
    const [smaller] = expectValue(offsetRegion(plate, 3))
    expect(smaller!.holes).toHaveLength(2)
    const [one] = expectValue(offsetRegion(plate, 4))
    expect(one!.holes).toHaveLength(1)
    expect(expectValue(offsetRegion(plate, 10))[0]!.holes).toEqual([])
  })

  it('a hole that grows through the edge opens the outline', () => {
    const plate: Region = { ...plank, holes: [circle({ x: 95, y: 30 }, 2)] }
    const [open, ...rest] = expectValue(offsetRegion(plate, -2))
    expect(rest).toEqual([])
    expect(open!.holes).toEqual([])
  })

  it('regions that grow into each other become one, with what they close in as a hole', () => {
    const left = rectangle({ left: 0, bottom: 0, right: 10, top: 40 })
    const right = rectangle({ left: 14, bottom: 0, right: 24, top: 40 })
    expect(expectValue(offsetRegions([left, right], 1.9))).toHaveLength(2)
    expect(expectValue(offsetRegions([left, right], 2.1))).toHaveLength(1)
    const frame: Region[] = [
      rectangle({ left: 0, bottom: 0, right: 40, top: 5 }),
      rectangle({ left: 0, bottom: 35, right: 40, top: 40 }),
      rectangle({ left: 0, bottom: 6, right: 5, top: 34 }),
      rectangle({ left: 35, bottom: 6, right: 40, top: 34 }),
    ]
    const [closed, ...rest] = expectValue(offsetRegions(frame, 1))
    expect(rest).toEqual([])
    expect(closed!.holes).toHaveLength(1)
  })

  it('the mouth of a pocket closes, and the pocket stays as a hole', () => {
    const pocket: Region = {
      outer: polygon(
        corners([
          [0, 0],
          [40, 0],
          [40, 40],
          [21, 40],
          [21, 30],
          [30, 30],
          [30, 10],
          [10, 10],
          [10, 30],
          [19, 30],
          [19, 40],
          [0, 40],
        ]),
      ),
      holes: [],
    }
    const [grown, ...rest] = expectValue(offsetRegion(pocket, 1.5))
    expect(rest).toEqual([])
    expect(grown!.holes).toHaveLength(1)
    expect(regionArea({ outer: grown!.holes[0]!, holes: [] })).toBeCloseTo(17 * 17, 0)
  })

  it('which way the contours run carries no meaning', () => {
    const plate: Region = { ...plank, holes: [circle({ x: 30, y: 30 }, 10)] }
    const turned: Region = { outer: reverseContour(plate.outer), holes: plate.holes.map(reverseContour) }
    for (const delta of [3, -3]) {
      const there = expectValue(offsetRegion(plate, delta)).map(regionArea)
      expect(expectValue(offsetRegion(turned, delta)).map(regionArea)).toEqual(
        there.map(a => expect.closeTo(a, 9)),
      )
    }
  })

  it('no distance, or one below the least that counts, changes nothing', () => {
    expect(expectValue(offsetRegion(plank, 0))).toEqual([plank])
    expect(expectValue(offsetRegion(plank, coincident))).toEqual([plank])
  })
})

describe('names of edges', () => {
  const named: Region = {
    outer: polygon(
      corners([
        [0, 0],
        [30, 0],
        [30, 20],
        [0, 20],
      ]),
      ['foot', 'nose', 'deck', undefined],
    ),
    holes: [circle({ x: 10, y: 10 }, 4, 'bore')],
  }

  it('an edge keeps its name, a join has none', () => {
    const [grown] = expectValue(offsetRegion(named, 2))
    expect(grown!.outer.segments.map(s => [s.kind, s.tag]).sort()).toEqual(
      [
        ['arc', undefined],
        ['arc', undefined],
        ['arc', undefined],
        ['arc', undefined],
        ['line', 'foot'],
        ['line', 'nose'],
        ['line', 'deck'],
        ['line', undefined],
      ].sort(),
    )
    expect(grown!.holes[0]!.segments.every(s => s.tag === 'bore')).toBe(true)
    const foot = grown!.outer.segments.find(s => s.tag === 'foot')!
    expect(middleOf(foot)).toEqual({ x: 15, y: -2 })
  })

  it('a join takes the name it is given', () => {
    const [grown] = expectValue(offsetRegion(named, 2, { joinTag: 'eased' }))
    expect(grown!.outer.segments.filter(s => s.tag === 'eased')).toHaveLength(4)
  })

  it('names survive where the curve has to be arranged', () => {
    // at half the height foot and deck fall together; the slot around them is what the arrangement sorts out
    const path = polyline(
      corners([
        [0, 0],
        [40, 0],
        [40, 10],
        [0, 10],
      ]),
      ['out', 'turn', 'back'],
    )
    const [band] = expectValue(offsetPath(path, 5, { joinTag: 'end' }))
    const tags = new Set(band!.outer.segments.map(s => s.tag))
    expect(tags).toEqual(new Set(['out', 'turn', 'back', 'end']))
  })
})

describe('what cannot be offset is a fault with a case that can be run', () => {
  it('a coordinate or a distance that is no number', () => {
    const broken: Region = {
      outer: polygon(
        corners([
          [0, 0],
          [10, Number.NaN],
          [5, 5],
        ]),
      ),
      holes: [],
    }
    for (const outcome of [
      offsetRegion(broken, 1),
      offsetRegion(plank, Number.NaN),
      offsetRegion(plank, Infinity),
    ]) {
      expect(outcome).toMatchObject({
        ok: false,
        fault: { operation: 'offsetRegions', reason: 'not-finite' },
      })
    }
  })

  it('a mitre limit below 1', () => {
    const outcome = offsetRegion(plank, 1, { mitreLimit: 0.5 })
    expect(outcome).toMatchObject({ ok: false, fault: { reason: 'mitre-limit', facts: { mitreLimit: 0.5 } } })
  })

  it('a band of no width', () => {
    const outcome = offsetPath(
      polyline(
        corners([
          [0, 0],
          [1, 0],
        ]),
      ),
      0,
    )
    expect(outcome).toMatchObject({
      ok: false,
      fault: { operation: 'offsetPath', reason: 'distance', input: { distance: 0 } },
    })
  })
})
