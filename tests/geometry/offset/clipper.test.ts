import { beforeAll, describe, expect, it } from 'vitest'
import { chordPoints } from '../../../src/geometry/approximate/chords.ts'
import { signedArea } from '../../../src/geometry/measure/area.ts'
import { contourBounds } from '../../../src/geometry/measure/bounds.ts'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { offsetRegion } from '../../../src/geometry/offset/offset.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { printable } from '../../../src/number/tolerance.ts'
import { type Clipper, loadClipper } from '../boolean/clipper.ts'
import { expectValue } from '../expect-value.ts'
import { comb } from '../generate/comb.ts'
import { gear } from '../generate/gear.ts'
import { randomFrom } from '../generate/random.ts'
import { randomStar } from '../generate/star.ts'
import { bentOutline, modellerErrs } from './bent-outline.ts'
import { contoursOf, distanceTo } from './offset-laws.ts'

let clipper: Clipper

beforeAll(async () => {
  clipper = await loadClipper()
})

/** Chords this near to the arcs, in mm; the library rounds its own arcs as finely, and coordinates finer. */
const deviation = 0.0005
const decimals = 6
/**
 * What the chords of the outline, those of the joins and the rounding may come to together; where two arcs cross
 * at a flat angle, chords beside them cross several times as far away.
 */
const within = printable

function clipperOffset(region: Region, delta: number): Contour[] {
  const { module } = clipper
  const paths = clipper.paths([region], deviation)
  const grown = module.InflatePathsD(
    paths,
    delta,
    module.JoinType.Round,
    module.EndType.Polygon,
    2,
    decimals,
    deviation,
  )
  const contours = clipper.points(grown).map(points => polygon(points))
  grown.delete()
  paths.delete()
  return contours
}

function farthest(from: readonly Point[], to: readonly Contour[]): number {
  return from.reduce((most, p) => Math.max(most, distanceTo(to, p)), 0)
}

/** Contours too small for the other library's rounding to keep, or to lose, alike. */
function sizeable(contours: readonly Contour[]): readonly Contour[] {
  return contours.filter(c => {
    const { left, right, bottom, top } = contourBounds(c)
    return Math.min(right - left, top - bottom) > 10 * within
  })
}

/** Compares topology, the distance of the boundaries both ways, and which sample points lie inside. */
function expectAgreement(region: Region, delta: number, seed: number): void {
  const ours = expectValue(offsetRegion(region, delta))
  const mine = sizeable(contoursOf(ours))
  const theirs = sizeable(clipperOffset(region, delta))
  const count = (contours: readonly Contour[], sign: number) =>
    contours.filter(c => signedArea(c) * sign > 0).length
  expect([count(mine, 1), count(mine, -1)]).toEqual([count(theirs, 1), count(theirs, -1)])
  if (theirs.length === 0) return

  expect(
    farthest(
      mine.flatMap(c => [...chordPoints(c, 0.01)]),
      theirs,
    ),
  ).toBeLessThan(within)
  expect(
    farthest(
      theirs.flatMap(c => c.segments.map(s => s.from)),
      mine,
    ),
  ).toBeLessThan(within)

  const random = randomFrom(seed)
  const { left, right, bottom, top } = contourBounds(region.outer)
  for (let i = 0; i < 50; i++) {
    const p = {
      x: left - 3 + (right - left + 6) * random(),
      y: bottom - 3 + (top - bottom + 6) * random(),
    }
    if (distanceTo(theirs, p) < 2 * within) continue
    const inTheirs = theirs.filter(c => pointInRegion({ outer: c, holes: [] }, p) === 'inside')
    const winding = inTheirs.reduce((sum, c) => sum + Math.sign(signedArea(c)), 0)
    expect([p, ours.some(r => pointInRegion(r, p) === 'inside')]).toEqual([p, winding > 0])
  }
}

describe('offsets agree with those of a polygon library on fine chords', () => {
  it('for outlines of lines and arcs: as many contours and holes, near to each other, the same points inside', () => {
    let compared = 0
    for (let seed = 1; seed <= 150; seed++) {
      const made = bentOutline(seed)
      if (made === undefined) continue
      expectAgreement(made.region, made.delta, seed)
      compared++
    }
    expect(compared).toBeGreaterThan(100)
  })

  it('for outlines that the solid modeller gets wrong', () => {
    for (const seed of modellerErrs) {
      const { region, delta } = bentOutline(seed)!
      expectAgreement(region, delta, seed)
    }
  })

  it.each([
    ['a gear', gear(9)],
    ['a comb', comb(6)],
    ['a random star', randomStar(40, randomFrom(3))],
  ] as const)('for %s', (_, region) => {
    for (const delta of [0.7, 1, 1.9, -0.4, -1, -1.9]) expectAgreement(region, delta, 5)
  })
})
