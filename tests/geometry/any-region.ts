import fc from 'fast-check'
import { arcBySagitta } from '../../src/geometry/construct/arc-from.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import type { Contour, Region } from '../../src/geometry/shape/contour.ts'
import { compose, type Matrix, mirrorAcross, scale, shift, turn } from '../../src/geometry/shape/matrix.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { rectangleWithCorners } from '../../src/geometry/shape/rectangle.ts'
import { line, type Segment } from '../../src/geometry/shape/segment.ts'
import { slot } from '../../src/geometry/shape/slot.ts'
import { expectValue } from './expect-value.ts'

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/**
 * A rough ring of 8 to 24 lines and arcs around the origin, 40 to 60 mm from it, counter-clockwise. The arcs
 * leave their chords at less than 12°, the corners are wider than that, so nothing crosses.
 */
export const anyOutline: fc.Arbitrary<Contour> = fc
  .integer({ min: 8, max: 24 })
  .chain(count => fc.array(fc.tuple(real(40, 60), real(-1, 1)), { minLength: count, maxLength: count }))
  .map(places => {
    const corners = places.map(([radius], i): Point => {
      const angle = (2 * Math.PI * i) / places.length
      return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) }
    })
    const segments = places.map(([, bow], i): Segment => {
      const from = corners[i]!
      const to = corners[(i + 1) % corners.length]!
      const chord = Math.hypot(to.x - from.x, to.y - from.y)
      const bent = arcBySagitta(from, to, 0.05 * bow * chord)
      return bent.ok && Math.abs(bow) > 0.2 ? bent.value : line(from, to)
    })
    return { segments, closed: true }
  })

const anyHole = fc.tuple(real(-10, 10), real(-10, 10), real(1, 12)).map(([x, y, r]) => circle({ x, y }, r))

/** An outline with or without a hole, a slot, or a rectangle with rounded corners. */
export const anyRegion: fc.Arbitrary<Region> = fc.oneof(
  fc
    .tuple(anyOutline, fc.option(anyHole, { nil: undefined }))
    .map(([outer, hole]): Region => ({ outer, holes: hole === undefined ? [] : [hole] })),
  fc
    .tuple(real(-50, 50), real(-50, 50), real(1, 30))
    .map(([x, y, width]) => slot({ x: 0, y: 0 }, { x, y }, width)),
  fc.tuple(real(1, 100), real(1, 100), real(0.01, 0.5)).map(([width, height, share]) => {
    const radius = share * Math.min(width, height)
    const bounds = { left: 0, bottom: 0, right: width, top: height }
    return expectValue(rectangleWithCorners(bounds, { 'bottom-left': { radius }, 'top-right': { radius } }))
  }),
)

/** A similarity and what it multiplies lengths by; half of them mirror. */
export const anySimilarity: fc.Arbitrary<{ readonly matrix: Matrix; readonly factor: number }> = fc
  .tuple(real(-4, 4), real(-10_000, 10_000), real(-10_000, 10_000), real(0.1, 10), fc.boolean())
  .map(([angle, x, y, factor, mirrors]) => {
    const moved = compose(compose(scale(factor), turn(angle)), shift(x, y))
    return { matrix: mirrors ? compose(mirrorAcross(0), moved) : moved, factor }
  })
