import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { isSide } from '../../../src/finding/face-name.ts'
import type { Side } from '../../../src/finding/side.ts'
import { contourBounds } from '../../../src/geometry/measure/bounds.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { faceOf, type Part, type Piece } from '../../../src/model/part.ts'
import type { Point3 } from '../../../src/model/pose.ts'
import { printable } from '../../../src/number/tolerance.ts'
import { plain } from '../../../src/text/words.ts'
import { boreInPart, modelOf, onlyPart, planWithCuts } from '../../model/model-of.ts'
import { randomBlock } from '../random-block.ts'
import { keyText, papersOf, said, textsOf } from '../sheets-of.ts'

type Ring = { readonly feature: string; readonly centre: Point; readonly diameter: number }

/** The ring of every hole; the rim of a mouth is drawn after it. */
function ringsOf({ marks }: Drawing, part: string): readonly Ring[] {
  const rings = marks.flatMap((m): Ring[] => {
    if (m.kind !== 'path' || m.role !== 'drill' || m.subject === undefined) return []
    const { left, right, bottom, top } = contourBounds(m.contours[0]!)
    const centre = { x: (left + right) / 2, y: (bottom + top) / 2 }
    return [{ feature: m.subject.slice(part.length + 1), centre, diameter: right - left }]
  })
  return rings.filter(({ feature }, i) => rings.findIndex(ring => ring.feature === feature) === i)
}

/** How far a place is from the plane of a side, into the wood. */
function from(solid: Piece['solid'], side: Side, p: Point3): number {
  const { origin, out } = solid.faces[side].pose
  return (origin.x - p.x) * out.x + (origin.y - p.y) * out.y + (origin.z - p.z) * out.z
}

const cross = (a: Point3, b: Point3): Point3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
})

/** Which side a strip says that it starts at, or lies against the fence with. */
function sideSaid(words: string, part: Part): Side {
  if (words.includes('face side')) return 'front'
  if (words.includes('face edge')) return part.faceEdge
  if (words.includes('reference end')) return part.referenceEnd
  throw new Error(`no reference edge in ${words}`)
}

/** Where a strip says that its fence is, in one line or several. */
function fenceWords({ marks }: Drawing): string {
  const words = textsOf(marks)
    .filter(({ subject, weight, at }) => subject === 'strip' && weight === 'regular' && at.y > 0)
    .toSorted((a, b) => b.at.y - a.at.y || a.at.x - b.at.x)
    .map(({ words }) => plain(words))
    .join(' ')
  return /fence .* from the .*/.exec(words)![0]
}

/**
 * Every ring is where the hole is in the wood: as far above the fold as it is from the edge at the fence, as far from
 * x = 0 as from the reference side, and the strip is not a mirror image of the face.
 */
function expectTrue(part: Part, piece: Piece, drawing: Drawing): readonly string[] {
  const { solid } = piece
  const rings = ringsOf(drawing, part.id)
  const texts = textsOf(drawing.marks)
  const fence = sideSaid(fenceWords(drawing), part)
  const reference = sideSaid(
    texts.filter(t => t.subject === 'reference-end').map(t => t.words.join(''))[0]!,
    part,
  )
  const ends = drawing.marks.find(m => m.subject === 'ruler' && m.kind === 'path' && m.role === 'cut')
  if (ends?.kind !== 'path') throw new Error('no ruler')
  const { from: zero, to: far } = ends.contours[0]!.segments[0]!
  const toward = Math.sign(far.x)
  for (const { feature, centre, diameter } of rings) {
    const planned = solid.features.find(({ id }) => id === feature)!
    if (planned.shape.kind !== 'bore') throw new Error('no bore')
    const place = boreInPart(solid, planned)
    // the half for the other end is turned upside down
    const half = rings.length > 0 && Math.abs(centre.y - from(solid, fence, place)) < 1 ? 1 : -1
    expect(half * centre.y).toBeCloseTo(from(solid, fence, place), 9)
    expect(toward * centre.x).toBeCloseTo(from(solid, reference, place), 9)
    expect(diameter).toBeCloseTo(planned.shape.diameter.mm, 9)
    const inward = (side: Side): Point3 => {
      const { x, y, z } = solid.faces[side].pose.out
      return { x: -x, y: -y, z: -z }
    }
    const out = cross(inward(reference), inward(fence))
    const { pose } = faceOf(solid, planned.face)
    for (const axis of ['x', 'y', 'z'] as const)
      expect(out[axis] * toward * half).toBeCloseTo(pose.out[axis], 12)
    if (isSide(planned.face)) {
      expect(zero.x).toBe(0)
      const opposite = {
        left: 'right',
        right: 'left',
        top: 'bottom',
        bottom: 'top',
        front: 'back',
        back: 'front',
      } as const
      const whole = from(solid, reference, solid.faces[opposite[reference]].pose.origin)
      expect(Math.abs(Math.abs(far.x) - whole)).toBeLessThan(printable)
    }
  }
  return rings.map(({ feature }) => feature)
}

const handOf = (id: string) => (id.endsWith('-mirrored') ? 'mirrored' : 'drawn')

test('the centres on the strips of any block are where its holes are, measured from the reference edges of either hand', () => {
  fc.assert(
    fc.property(randomBlock, text => {
      const part = onlyPart(modelOf(text))
      for (const { id, drawings } of papersOf(text, 'strip')) {
        const piece = part.pieces.find(({ hand }) => hand === handOf(id))!
        expect(expectTrue(part, piece, drawings[0]).length).toBeGreaterThan(0)
      }
    }),
    { numRuns: 200 },
  )
})

test('every hole of every row is on a strip of its hand, or on one that both hands share', () => {
  fc.assert(
    fc.property(randomBlock, text => {
      const part = onlyPart(modelOf(text))
      const rows = part.drawn.features.filter(({ row }) => row !== undefined).map(({ id }) => id)
      const strips = papersOf(text, 'strip')
      for (const hand of ['drawn', 'mirrored'] as const) {
        const on = strips
          .filter(
            ({ id, drawings }) => handOf(id) === hand || said(drawings[0]).join(' ').includes('turned over'),
          )
          .flatMap(({ drawings }) => ringsOf(drawings[0], part.id).map(({ feature }) => feature))
        expect(rows.filter(id => !on.includes(id))).toEqual([])
        expect(new Set(on).size).toBe(on.length)
      }
    }),
    { numRuns: 100 },
  )
})

const pair = (body: string): string =>
  planWithCuts([body]).replace('    cuts', '    make: 2\n    mirrored: true\n    cuts')

test('a row that goes through has one strip for both hands: the mirrored piece is turned over', () => {
  const strips = papersOf(
    pair('row: pegs, at: { left: 10, bottom: 12 }, toward: right, spacing: 20, count: 4, diameter: 4'),
    'strip',
  )
  expect(strips.map(({ id }) => id)).toEqual(['plank-strip-1'])
  expect(keyText(strips[0]!.drawings[0])).toContain(
    'Piece 2, mirrored: turn over, the face side (front) down',
  )
})

test.each([
  ['stopped', 'depth: 5'],
  ['leaning', 'lean: { toward: left, angle: 8 }'],
  ['counterbored', 'counterbore: 8 x 2'],
])('a row that is %s has a strip for each hand, with the stop at the other end', (_, how) => {
  const strips = papersOf(
    pair(
      `row: pegs, at: { left: 10, bottom: 12 }, toward: right, spacing: 20, count: 4, diameter: 4, ${how}`,
    ),
    'strip',
  )
  expect(strips.map(({ id }) => id)).toEqual(['plank-strip-1', 'plank-strip-1-mirrored'])
  const [drawn, mirrored] = strips.map(({ drawings }) => drawings[0])
  expect(ringsOf(drawn!, 'plank').map(({ centre }) => centre.x)).toEqual([10, 30, 50, 70])
  expect(ringsOf(mirrored!, 'plank').map(({ centre }) => centre.x)).toEqual([-10, -30, -50, -70])
  expect(keyText(mirrored!)).toContain('the same face up and the same edge against the fence')
  expect(said(mirrored!)).toContain('reference end')
  expect(said(mirrored!).join(' ')).not.toMatch(/\b(left|right)\b/)
})

test('a strip says the bit, the stop’s depth, the fence distance and the running distances', () => {
  const text = planWithCuts([
    'row: pegs, on: top, at: { left: 10, front: 7 }, toward: right, spacing: 20, count: 4, diameter: 4, depth: 9',
  ])
  const [strip] = papersOf(text, 'strip')
  const lines = said(strip!.drawings[0])
  for (const line of [
    'bore 4 mm, 9 mm deep',
    'fence 7 mm from the face side (front)',
    '10',
    '30',
    '50',
    '70',
    '7 mm',
  ])
    expect(lines).toContain(line)
})

test('a table that is tilted is said with the angle that two leans come to', () => {
  // tan² = tan² 10° + tan² 14°, as rake and splay add; by definition
  const text = planWithCuts([
    'row: legs, at: { left: 20, bottom: 15 }, toward: right, spacing: 30, count: 3, diameter: 6, depth: 8, lean: [{ toward: left, angle: 10 }, { toward: bottom, angle: 14 }]',
  ])
  const angle =
    (Math.atan(Math.hypot(Math.tan(Math.PI / 18), Math.tan((14 * Math.PI) / 180))) * 180) / Math.PI
  expect(keyText(papersOf(text, 'strip')[0]!.drawings[0])).toContain(`Tilt the table ${angle.toFixed(2)}°`)
})

test('holes on the two ends that lie as far from the face side share a strip with the fold in its middle', () => {
  const text = planWithCuts([
    'hole: a, on: left, at: { bottom: 12, front: 8 }, diameter: 6, depth: 15',
    'hole: b, on: right, at: { bottom: 30, front: 8 }, diameter: 6, depth: 15',
  ])
  const strips = papersOf(text, 'strip')
  expect(strips).toHaveLength(1)
  const { drawings } = strips[0]!
  const centres = ringsOf(drawings[0], 'plank').map(({ centre }) => [centre.x, centre.y])
  expect(centres).toEqual([
    [12, 8],
    [30, -8],
  ])
})

test('one hole alone and a circle of holes have no strip', () => {
  const text = planWithCuts([
    'hole: a, at: { left: 12, bottom: 8 }, diameter: 6',
    'hole-circle: c, at: { left: 60, bottom: 20 }, circle: 20, count: 6, diameter: 3',
  ])
  expect(papersOf(text, 'strip')).toEqual([])
})

test('of a grid every line has a strip, in the direction that has fewer lines', () => {
  const text = planWithCuts(['grid: g, at: { left: 10, bottom: 10 }, spacing: 10, count: 6 x 2, diameter: 3'])
  const strips = papersOf(text, 'strip').map(({ drawings }) => ringsOf(drawings[0], 'plank'))
  expect(strips.map(rings => rings.map(({ centre }) => [centre.x, centre.y]))).toEqual(
    [10, 20].map(y => [10, 20, 30, 40, 50, 60].map(x => [x, y])),
  )
})

test('a disc has no straight edge for a fence, and no strip', () => {
  const text = `paperjig: 1
title: Gate
units: mm
parts: { wheel: { thickness: 8, round: 80, cuts: [ { row: a, at: { left: 20, bottom: 40 }, toward: right, spacing: 10, count: 4, diameter: 3 } ] } }
`
  expect(papersOf(text, 'strip')).toEqual([])
})

test('a taper is held by its straight edge', () => {
  const text = `paperjig: 1
title: Gate
units: mm
parts: { arm: { thickness: 8, size: 120, taper: { left: 40, right: 20, straight: top }, cuts: [ { row: a, at: { left: 20, top: 8 }, toward: right, spacing: 20, count: 4, diameter: 3 } ] } }
`
  const [strip] = papersOf(text, 'strip')
  expect(said(strip!.drawings[0])).toContain('fence 8 mm from the face edge (top)')
})
