import fc from 'fast-check'
import { expect, test } from 'vitest'
import { reach } from '../../../src/geometry/solid/body.ts'
import { cutCone } from '../../../src/geometry/solid/cut-cone.ts'
import { along, cross, dot, minus, type Point3, unit3 } from '../../../src/geometry/solid/point3.ts'
import { type Cone, circleAbout, type Plane3, section } from '../../../src/geometry/solid/ring.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import { anyCone, anyDirection, at } from './rods.ts'

const maxDeviation = 0.001

/** Points of a cone on so many circles of so many points each. */
function pointsOf(
  { from, to, radiusFrom, radiusTo }: Cone,
  circles: number,
  round: number,
): readonly Point3[] {
  const axis = unit3(minus(to, from))!
  return Array.from({ length: circles + 1 }, (_, i) => {
    const share = i / circles
    const ring = circleAbout(
      along(from, minus(to, from), share),
      axis,
      radiusFrom + (radiusTo - radiusFrom) * share,
    )
    return Array.from({ length: round }, (_, k) => {
      const turn = (2 * Math.PI * k) / round
      return along(along(ring.centre, ring.u, Math.cos(turn)), ring.v, Math.sin(turn))
    })
  }).flat()
}

const planeOf = (p: Point3, normal: Point3): Plane3 => ({ normal, offset: dot(normal, p) })

/** Source: a cylinder of radius r cut at the angle a from square is an ellipse of half axes r / cos a and r. */
test('a bar cut aslant is an ellipse', () => {
  const lean = Math.PI / 6
  const cone: Cone = { from: at(0, 0, -20), to: at(0, 0, 20), radiusFrom: 3, radiusTo: 3 }
  const ring = section(cone, planeOf(at(0, 0, 1), at(Math.sin(lean), 0, Math.cos(lean))))!
  expect(ring.centre).toEqual({ x: 0, y: 0, z: expect.closeTo(1, 12) })
  expect(Math.hypot(ring.u.x, ring.u.y, ring.u.z)).toBeCloseTo(3 / Math.cos(lean), 12)
  expect(Math.hypot(ring.v.x, ring.v.y, ring.v.z)).toBeCloseTo(3, 12)
})

test('a bar cut as good as square stays as wide as it is', () => {
  // the rise of the plane is nothing but rounding, and its direction may be that of the axis
  const axis = unit3(at(1e-17, 1, 0))!
  const cone: Cone = { from: at(54.86, -11, 34.27), to: at(54.86, 19, 34.27), radiusFrom: 5.5, radiusTo: 5.5 }
  for (const normal of [at(0, -1, 0), at(6e-17, -1, 0), at(-3e-17, -1, 6e-17), axis]) {
    const ring = section(cone, planeOf(at(54.86, 0, 34.27), normal))!
    expect(Math.hypot(ring.u.x, ring.u.y, ring.u.z)).toBeCloseTo(5.5, 9)
    expect(Math.hypot(ring.v.x, ring.v.y, ring.v.z)).toBeCloseTo(5.5, 9)
  }
})

test('the section of any cone lies on the plane and on the cone', () => {
  fc.assert(
    fc.property(anyCone, anyDirection, fc.double({ min: 0, max: 1, noNaN: true }), (cone, normal, share) => {
      const axis = unit3(minus(cone.to, cone.from))!
      const plane = planeOf(along(cone.from, minus(cone.to, cone.from), share), normal)
      const ring = section(cone, plane)
      fc.pre(ring !== undefined)
      const long = Math.hypot(...Object.values(minus(cone.to, cone.from)))
      for (let k = 0; k < 12; k++) {
        const p = along(along(ring!.centre, ring!.u, Math.cos(k)), ring!.v, Math.sin(k))
        // a plane that is all but square to the axis is taken to be square
        expect(Math.abs(dot(normal, p) - plane.offset)).toBeLessThan(coincident)
        const t = dot(minus(p, cone.from), axis)
        const out = cross(minus(p, cone.from), axis)
        const radius = cone.radiusFrom + ((cone.radiusTo - cone.radiusFrom) * t) / long
        expect(Math.hypot(out.x, out.y, out.z)).toBeCloseTo(radius, 6)
      }
    }),
    { numRuns: 2000 },
  )
})

test('a cone cut by up to three planes reaches as far as those of its points that are left', () => {
  const cuts = fc.array(fc.tuple(anyDirection, fc.double({ min: 0.1, max: 0.9, noNaN: true })), {
    minLength: 1,
    maxLength: 3,
  })
  fc.assert(
    fc.property(anyCone, cuts, anyDirection, (cone, given, d) => {
      const planes = given.map(([normal, share]) =>
        planeOf(along(cone.from, minus(cone.to, cone.from), share), normal),
      )
      const body = cutCone(cone, planes, maxDeviation)
      const left = pointsOf(cone, 24, 48).filter(p =>
        planes.every(plane => dot(plane.normal, p) <= plane.offset - coincident),
      )
      if (body === undefined) {
        expect(left).toEqual([])
        return
      }
      // nothing that is left lies outside of it
      for (const p of left) expect(dot(d, p)).toBeLessThanOrEqual(reach(body, d) + maxDeviation * 2)
      // and it lies in every half of space, and in the cone
      for (const { normal, offset } of planes) expect(reach(body, normal)).toBeLessThanOrEqual(offset + 1e-5)
      const whole = cutCone(cone, [], maxDeviation)!
      expect(reach(body, d)).toBeLessThanOrEqual(reach(whole, d) + 1e-9)
    }),
    { numRuns: 1000 },
  )
})
