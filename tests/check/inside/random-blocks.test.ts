import fc from 'fast-check'
import { expect, test } from 'vitest'
import { check } from '../../../src/check/registry.ts'
import { cross, dot, minus } from '../../../src/geometry/solid/point3.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import type { Workshop } from '../../../src/workshop/workshop.ts'
import { modelOf } from '../../model/model-of.ts'
import { anyBlock, planOfBlock, type RandomBlock, turnedOf } from './random-blocks.ts'
import { type Between, type Block, sampledDistance, type Turned } from './sampled-distance.ts'

/** A shop that wants as much wood everywhere, so that one number tells what is to be found. */
const wanted = 2
const shop: Workshop = {
  ...defaultWorkshop,
  wall: wanted,
  clear: { ...defaultWorkshop.clear, least: wanted, most: wanted, underPoint: wanted },
}

/** What the check may be wrong by, and how near the reference comes to the truth, in millimetres. */
const tolerance = 0.01
const gap = 0.005

/** So many blocks, in parts that are done before anybody thinks that the test hangs. */
const blocks = 2000
const parts = 8

const betweenHoles = new Set([
  'features-meet',
  'wall-too-thin',
  'holes-meet-inside',
  'wall-inside',
  'exit-on-feature',
])

/** What is found between each two holes: how often, and the wood between them. */
function foundIn(random: RandomBlock): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>()
  for (const { rule, places, measured } of check(modelOf(planOfBlock(random)), shop)) {
    const [first, second] = places.map(({ feature }) => feature)
    if (!betweenHoles.has(rule) || second === undefined) continue
    const pair = [first, second].sort().join(' ')
    const thin = rule === 'wall-inside' || rule === 'wall-too-thin'
    found.set(pair, [...(found.get(pair) ?? []), thin ? measured!.value : 0])
  }
  return found
}

/**
 * Reference: the surface of the one hole sampled within a stated bound, the other's distance in closed form
 * (`sampled-distance.ts`); it shares no code with the kernel's distance, nor with the model's axes.
 */
test.each(Array.from({ length: parts }, (_, i) => i + 1))(
  'in 2,000 random blocks no two holes that come too near are missed, and none are found that do not: part %d of 8',
  () => {
    let [asked, close, undecided] = [0, 0, 0]
    fc.assert(
      fc.property(anyBlock, random => {
        const { block, holes } = random
        const found = foundIn(random)
        const turned = holes.map(hole => turnedOf(hole, block, Math.PI / 2))
        holes.forEach((_, i) => {
          for (let j = i + 1; j < holes.length; j++) {
            const known = distanceBetween(turned[i]!, turned[j]!, block)
            const alarms = found.get([`h${i}`, `h${j}`].sort().join(' ')) ?? []
            asked += 1
            const where = `h${i} and h${j} of ${planOfBlock(random)} ${JSON.stringify(known)}`
            expect(alarms.length, `once only: ${where}`).toBeLessThanOrEqual(1)
            const [alarm] = alarms
            if (alarm !== undefined) {
              close += 1
              expect(alarm, `no false alarm: ${where}`).toBeGreaterThanOrEqual(known.atLeast - tolerance)
              expect(known.atLeast, `no false alarm: ${where}`).toBeLessThanOrEqual(wanted + tolerance)
            } else if (!areWantedSo(turned[i]!, turned[j]!))
              expect(known.atMost, `no miss: ${where}`).toBeGreaterThan(wanted - tolerance)
            if (known.atMost - known.atLeast > gap * 2 && known.atLeast <= wanted) undecided += 1
            else if (alarm !== undefined) {
              expect(alarm, `as far: ${where}`).toBeLessThanOrEqual(known.atMost + tolerance)
            }
          }
        })
      }),
      { numRuns: blocks / parts, endOnFailure: true },
    )
    expect(close).toBeGreaterThan(blocks / parts / 2)
    expect(undecided / asked).toBeLessThan(0.02)
  },
)

/**
 * Source: by definition; a circle of radius r about an axis reaches r·|n × axis| farther in the direction n than its
 * centre, and what is turned about the axis as far as its widest circle. Nothing where the hole comes out beside it,
 * which is another rule's business.
 */
function woodAhead({ from, into, profile }: Turned, { length, width, thickness }: Block): number | undefined {
  const planes = [
    { normal: { x: 1, y: 0, z: 0 }, offset: length },
    { normal: { x: -1, y: 0, z: 0 }, offset: 0 },
    { normal: { x: 0, y: 1, z: 0 }, offset: width },
    { normal: { x: 0, y: -1, z: 0 }, offset: 0 },
    { normal: { x: 0, y: 0, z: 1 }, offset: thickness },
    { normal: { x: 0, y: 0, z: -1 }, offset: 0 },
  ]
  const isAhead = ({ normal }: (typeof planes)[number]) => dot(normal, into) > Math.SQRT1_2
  const before = ({ normal, offset }: (typeof planes)[number]) => {
    const heads = dot(normal, into)
    const aside = Math.sqrt(Math.max(0, 1 - heads * heads))
    return offset - Math.max(...profile.map(([t, r]) => dot(normal, from) + t * heads + r * aside))
  }
  const beside = planes.filter(plane => !isAhead(plane) && Math.abs(dot(plane.normal, into)) < Math.SQRT1_2)
  if (beside.some(plane => before(plane) < 0)) return undefined
  return Math.min(...planes.filter(isAhead).map(before))
}

test('in 500 random blocks the wood before the end of every stopped hole is as by its figures', () => {
  let thin = 0
  fc.assert(
    fc.property(anyBlock, random => {
      const found = new Map(
        check(modelOf(planOfBlock(random)), shop)
          .filter(({ rule }) => rule === 'too-deep')
          .map(({ places, measured }) => [places[0]!.feature, measured!.value]),
      )
      random.holes.forEach((hole, i) => {
        if (hole.depth === undefined) return
        const left = woodAhead(turnedOf(hole, random.block, Math.PI / 2), random.block)
        if (left === undefined) return
        if (left < wanted) thin += 1
        if (left < wanted - 1e-5) expect(found.get(`h${i}`)).toBeCloseTo(left, 5)
        else if (left > wanted + 1e-5) expect(found.has(`h${i}`)).toBe(false)
      })
    }),
    { numRuns: 500, endOnFailure: true },
  )
  expect(thin).toBeGreaterThan(25)
})

/** Where what is nearest on the one is cut away, the other may know better. */
function distanceBetween(a: Turned, b: Turned, block: Block): Between {
  const one = sampledDistance(a, b, block, gap, wanted + tolerance)
  if (one.atMost - one.atLeast <= 2 * gap || one.atLeast > wanted) return one
  const other = sampledDistance(b, a, block, gap, wanted + tolerance)
  return {
    atLeast: Math.max(one.atLeast, other.atLeast),
    atMost: Math.min(one.atMost, other.atMost),
  }
}

/**
 * Two about one axis, a hole in a wide one that goes straight down, or a narrow one deeper than the wide one that it
 * comes out in, bored from the face across: those are wanted so.
 */
function areWantedSo(a: Turned, b: Turned): boolean {
  const parallel = Math.abs(dot(a.into, b.into)) > 1 - 1e-9
  const between = cross(minus(b.from, a.from), a.into)
  if (parallel && Math.hypot(between.x, between.y, between.z) < 1e-6) return true
  return isRecess(a, b) || isRecess(b, a) || isStep(a, b) || isStep(b, a)
}

/** Whether a plain, straight hole takes in another's rim on their face. */
function isRecess(outer: Turned, inner: Turned): boolean {
  const axes = [outer.into.x, outer.into.y, outer.into.z].map(Math.abs)
  const [[, wide], next] = outer.profile as [readonly [number, number], readonly [number, number]]
  if (Math.max(...axes) < 1 || next[1] !== wide) return false
  const p = minus(inner.from, outer.from)
  const apart = Math.hypot(p.x, p.y, p.z)
  return (
    Math.abs(dot(p, outer.into)) < 1e-9 && apart + Math.max(...inner.profile.map(([, r]) => r)) / 2 < wide
  )
}

/** Whether of two plain, straight holes of front and back the narrow one, which is the deeper, lies within the wide one. */
function isStep(outer: Turned, inner: Turned): boolean {
  const plain = [outer, inner].map(({ into, profile: [rim, end] }) => ({
    isPlain: Math.abs(into.z) === 1 && end![1] === rim![1],
    radius: rim![1],
    depth: end![0],
  }))
  const [wide, narrow] = [plain[0]!, plain[1]!]
  const aside = Math.hypot(inner.from.x - outer.from.x, inner.from.y - outer.from.y)
  return wide.isPlain && narrow.isPlain && aside + narrow.radius <= wide.radius && narrow.depth > wide.depth
}
