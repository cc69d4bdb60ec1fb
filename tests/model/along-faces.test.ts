import { expect, test } from 'vitest'
import { sides } from '../../src/finding/side.ts'
import { regionArea } from '../../src/geometry/measure/area.ts'
import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import type { Bounds, Contour } from '../../src/geometry/shape/contour.ts'
import { finishedOutline, silhouette } from '../../src/model/finished-outline.ts'
import { mirrorSolid } from '../../src/model/mirror.ts'
import type { Part } from '../../src/model/part.ts'
import { workedLines } from '../../src/model/strip.ts'
import { modelOf, onlyPart, partWithCuts, planOf } from './model-of.ts'

const box = (left: number, bottom: number, right: number, top: number): Bounds => ({
  left,
  bottom,
  right,
  top,
})

/** The rectangle of the only feature, and the face that it is seen on. */
function seen(part: Part) {
  const [feature, ...others] = part.drawn.features
  if (others.length > 0 || feature === undefined || !('region' in feature.shape)) throw new Error('not one')
  return { feature, bounds: rounded(regionBounds(feature.shape.region)) }
}

const rounded = (bounds: Bounds) =>
  Object.fromEntries(Object.entries(bounds).map(([key, value]) => [key, Number(value.toFixed(9)) + 0]))

/** 100 x 40 x 20. Front, back and ends are seen with the top up, top and bottom with the left end at the left. Source: the plan file's words. */
test.each<[groove: string, bounds: Bounds]>([
  ['at: { bottom: 10 }', box(0, 10, 100, 14)],
  ['at: { top: 10 }', box(0, 26, 100, 30)],
  ['at: center, along: length', box(0, 18, 100, 22)],
  ['at: { left: 7 }', box(7, 0, 11, 40)],
  ['at: center, along: width', box(48, 0, 52, 40)],
  ['on: back, at: { left: 7 }', box(89, 0, 93, 40)],
  ['on: top, at: { front: 3 }', box(0, 3, 100, 7)],
  ['on: top, at: { left: 3 }', box(3, 0, 7, 20)],
  ['on: bottom, at: { front: 3 }', box(0, 13, 100, 17)],
  ['on: left, at: { front: 3 }', box(13, 0, 17, 40)],
  ['on: right, at: { bottom: 3 }', box(0, 3, 20, 7)],
  ['at: { bottom: 10 }, stopped: { left: 5, right: 20 }', box(5, 10, 80, 14)],
  ['on: back, at: { bottom: 10 }, stopped: { left: 5 }', box(0, 10, 95, 14)],
  ['at: { left: 7 }, stopped: { top: 15 }', box(7, 0, 11, 25)],
  ['at: { bottom: 10 }, stopped: { right: 20 }, length: 30', box(50, 10, 80, 14)],
  ['on: right, at: { front: 3 }, stopped: { bottom: 6 }, length: 12', box(3, 6, 7, 18)],
])('a groove %s takes the band that the words say', (groove, bounds) => {
  const { feature, bounds: found } = seen(partWithCuts([`groove: a, ${groove}, width: 4, depth: 6`]))
  expect(found).toEqual(bounds)
  expect(feature.shape).toMatchObject({
    kind: 'groove',
    runs: bounds.right - bounds.left === 4 ? 'y' : 'x',
    width: { mm: 4 },
    depth: { mm: 6 },
    stopped: groove.includes('stopped'),
  })
})

/** The strip on the front or back, whichever of the two faces the plan begins with. */
test.each<[rebate: string, face: string, bounds: Bounds]>([
  ['on: front, edge: bottom', 'front', box(0, 0, 100, 6)],
  ['on: front, edge: right', 'front', box(94, 0, 100, 40)],
  ['on: back, edge: right', 'back', box(0, 0, 6, 40)],
  ['on: back, edge: top, stopped: { left: 10 }', 'back', box(0, 34, 90, 40)],
  ['on: back, edge: top, stopped: { right: 10 }, length: 20', 'back', box(10, 34, 30, 40)],
  ['on: front, edge: left, stopped: { bottom: 12 }', 'front', box(0, 12, 6, 40)],
  ['on: top, edge: back', 'back', box(0, 31, 100, 40)],
  ['on: left, edge: front', 'front', box(0, 0, 9, 40)],
])('a rebate %s of 6 x 9 leaves the %s by its strip', (rebate, face, bounds) => {
  const { feature, bounds: found } = seen(partWithCuts([`rebate: a, ${rebate}, size: 6 x 9`]))
  expect(found).toEqual(bounds)
  expect(feature.face).toBe(face)
  const onEdge = rebate.startsWith('on: top') || rebate.startsWith('on: left')
  expect(feature.shape).toMatchObject({
    kind: 'rebate',
    width: { mm: onEdge ? 9 : 6 },
    depth: { mm: onEdge ? 6 : 9 },
  })
})

/** What the short face loses: thickness × tan(angle). Source: the right triangle under the slope. */
test.each<[bevel: string, face: string, bounds: Bounds]>([
  ['on: right, angle: 45, short: front', 'front', box(80, 0, 100, 40)],
  ['on: right, angle: 45, short: back', 'back', box(0, 0, 20, 40)],
  ['on: left, angle: 45, short: back', 'back', box(80, 0, 100, 40)],
  ['on: top, angle: 45, short: front', 'front', box(0, 20, 100, 40)],
])('a bevel %s makes the %s shorter by the thickness', (bevel, face, bounds) => {
  const { feature, bounds: found } = seen(partWithCuts([`bevel: a, ${bevel}`]))
  expect(found).toEqual(bounds)
  expect(feature.face).toBe(face)
})

test.each([5, 15, 22.5, 30, 60])('a bevel of %d° makes the face shorter by thickness × tan(angle)', angle => {
  const { feature } = seen(partWithCuts([`bevel: a, on: left, angle: ${angle}, short: front`]))
  if (feature.shape.kind !== 'bevel') throw new Error(feature.shape.kind)
  const lost = 20 * Math.tan((angle * Math.PI) / 180)
  expect(feature.shape.shorter.mm).toBeCloseTo(lost, 12)
  expect(regionBounds(feature.shape.region).right).toBeCloseTo(lost, 9)
  // the slope that the blade leaves: height / cos(angle)
  expect(Math.hypot(20, lost)).toBeCloseTo(20 / Math.cos((angle * Math.PI) / 180), 9)
})

test('the finished front ends at the line of a bevel that makes it shorter, the silhouette where the back ends', () => {
  const short = (face: string) =>
    partWithCuts([
      `bevel: a, on: right, angle: 45, short: ${face}`,
      'notch: n, on: left, at: { bottom: 0 }, size: 10 x 10',
    ]).drawn
  expect(finishedOutline(short('front')).map(regionArea)).toEqual([80 * 40 - 100])
  expect(silhouette(short('front')).map(regionArea)).toEqual([100 * 40 - 100])
  expect(finishedOutline(short('back')).map(regionArea)).toEqual([100 * 40 - 100])
})

test('two bevels of one corner take the corner once', () => {
  const { drawn } = partWithCuts([
    'bevel: a, on: [left, right], angle: 45, short: front',
    'bevel: b, on: top, angle: 45, short: front',
  ])
  expect(drawn.features.map(({ id }) => id)).toEqual(['a.left', 'a.right', 'b'])
  expect(finishedOutline(drawn).map(regionArea)).toEqual([expect.closeTo(60 * 20, 9)])
})

test('a chamfer along several edges is a feature of each, one all round is a ring', () => {
  const some = partWithCuts(['chamfer: a, on: [front, back], edges: [top, left], size: 2']).drawn
  expect(some.features.map(({ id, face }) => [id, face])).toEqual([
    ['a.front.top', 'front'],
    ['a.front.left', 'front'],
    ['a.back.top', 'back'],
    ['a.back.left', 'back'],
  ])
  const [ring] = partWithCuts(['round-over: a, edges: all, radius: 2']).drawn.features
  if (ring?.shape.kind !== 'round-over') throw new Error('no round-over')
  expect(ring).toMatchObject({ id: 'a', face: 'front', shape: { edge: 'all' } })
  expect(regionArea(ring.shape.region)).toBeCloseTo(4000 - 96 * 36, 9)
  expect(workedLines(ring.shape.region).map(({ closed }) => closed)).toEqual([true])
})

test('on a ring the rim and the inside are eased alike, each a feature of its own', () => {
  const part = onlyPart(
    modelOf(
      'paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  ring:\n    round: 60\n    inside: 20\n    thickness: 10\n    cuts:\n      - { chamfer: a, edges: all, size: 1 }\n',
    ),
  )
  const areas = part.drawn.features.map(({ shape }) => ('region' in shape ? regionArea(shape.region) : 0))
  expect(part.drawn.features.map(({ id }) => id)).toEqual(['a.1', 'a.2'])
  expect(areas.toSorted((a, b) => a - b).map(a => a / Math.PI)).toEqual([
    expect.closeTo(11 ** 2 - 10 ** 2, 6),
    expect.closeTo(30 ** 2 - 29 ** 2, 6),
  ])
})

test('a chamfer of two sizes is as wide on the face as the first and as deep down the edge as the second', () => {
  const shape = (on: string) => partWithCuts([`chamfer: a, ${on}, size: 2 x 5`]).drawn.features[0]!.shape
  expect(shape('on: front, edges: top')).toMatchObject({ width: { mm: 2 }, depth: { mm: 5 } })
  expect(shape('on: top, edges: front')).toMatchObject({ edge: 'top', width: { mm: 5 }, depth: { mm: 2 } })
})

test('a strip follows rounded corners and slanting ends, and stops at an inner corner', () => {
  const rounded = onlyPart(
    modelOf(planOf('    corners: 5\n    cuts: [{ rebate: a, edge: top, size: 2 x 2 }]\n')),
  )
  expect(regionArea(regionOf(rounded))).toBeCloseTo(200 - 2 * cornerLoss(5, 2), 9)
  const inner = onlyPart(
    modelOf(
      `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  elbow:\n    thickness: 10\n    outline:\n      - { to: [0, 0] }\n      - { to: [60, 0] }\n      - { to: [60, 20] }\n      - { to: [20, 20], name: seat }\n      - { to: [20, 50] }\n      - { to: [0, 50] }\n    cuts: [{ rebate: a, edge: seat, size: 4 x 2 }]\n`,
    ),
  )
  expect(seen(inner).bounds).toEqual(box(20, 16, 60, 20))
  const taper = onlyPart(
    modelOf(
      `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  wedge:\n    thickness: 10\n    outline:\n      - { to: [0, 0] }\n      - { to: [60, 0], name: foot }\n      - { to: [50, 20] }\n      - { to: [0, 20] }\n    cuts: [{ rebate: a, edge: foot, size: 4 x 2 }]\n`,
    ),
  )
  expect(regionArea(regionOf(taper))).toBeCloseTo(60 * 4 - (4 * 2) / 2, 9)
})

function regionOf(part: Part) {
  const [feature] = part.drawn.features
  if (feature === undefined || !('region' in feature.shape)) throw new Error('no region')
  return feature.shape.region
}

/** The area between a square corner and its arc of radius r, as far as h from one side: h·r − ∫√(r² − (r − t)²) dt. */
function cornerLoss(r: number, h: number): number {
  const u = r - h
  const underArc = (r * r * (Math.PI / 2 - Math.asin(u / r)) - u * Math.sqrt(r * r - u * u)) / 2
  return h * r - underArc
}

test('a groove ends where the outline does, and over a gap it is in two', () => {
  const disc = onlyPart(
    modelOf(
      'paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  wheel:\n    round: 100\n    inside: 30\n    thickness: 10\n    cuts:\n      - { groove: a, at: center, along: length, width: 4, depth: 6 }\n',
    ),
  ).drawn
  expect(disc.features.map(({ id }) => id)).toEqual(['a.1', 'a.2'])
  const lines: readonly Contour[] = disc.features.flatMap(({ shape }) =>
    'region' in shape ? workedLines(shape.region) : [],
  )
  // two sides of each stretch, and none where it runs out
  expect(lines.map(({ closed, segments }) => [closed, segments.length])).toEqual(Array(4).fill([false, 1]))
})

const extent = { length: 100, width: 40, thickness: 20 }

const every = onlyPart(
  modelOf(
    planOf(`    make: 2
    mirrored: true
    cuts:
      - { groove: a, on: [front, back], at: { bottom: 10 }, width: 4, depth: 6, stopped: { left: 5 } }
      - { groove: b, on: left, at: { front: 3 }, width: 4, depth: 6 }
      - { rebate: c, on: back, edge: right, size: 3 x 4, stopped: { top: 6 } }
      - { bevel: d, on: right, angle: 12, short: back }
      - { chamfer: e, edges: [top, left], size: 2 }
      - { round-over: f, on: back, edges: all, radius: 1 }
      - { engrave: g, at: { left: 4, bottom: 20 }, text: No 2, height: 5 }
      - { engrave: h, at: { right: 4, top: 2 }, lines: [[[0, 0], [5, 5], [10, 0], [0, 0]]] }
`),
  ),
)

test('mirrored twice every kind is as drawn', () => {
  const mirrored = every.pieces[1]!.solid
  expect(mirrorSolid(mirrored, extent)).toEqual(every.drawn)
  expect(mirrored.features).not.toEqual(every.drawn.features)
})

test('what runs along the right end of one piece runs along the end called right of the other, at the left', () => {
  const strip = (solid: Part['drawn'], id: string) => {
    const shape = solid.features.find(f => f.id === id)!.shape
    if (!('region' in shape)) throw new Error(shape.kind)
    return rounded(regionBounds(shape.region))
  }
  const mirrored = every.pieces[1]!.solid
  expect(strip(every.drawn, 'c')).toEqual(box(0, 0, 3, 34))
  // the back of the mirrored piece is seen with its right end at the right
  expect(strip(mirrored, 'c')).toEqual(box(97, 0, 100, 34))
  expect(mirrored.features.map(f => ('edge' in f.shape ? f.shape.edge : f.face))).toEqual(
    every.drawn.features.map(f => ('edge' in f.shape ? f.shape.edge : f.face)),
  )
})

test('an engraved text reads the same on both hands, from the same real end', () => {
  const text = (solid: Part['drawn']) => solid.features.find(f => f.id === 'g')!.shape
  expect(text(every.drawn)).toMatchObject({ text: 'No 2', at: { x: 4, y: 20 }, align: 'start' })
  expect(text(every.pieces[1]!.solid)).toMatchObject({ text: 'No 2', at: { x: 96, y: 20 }, align: 'end' })
})

test.each<[at: string, point: readonly [number, number], align: string]>([
  ['{ left: 4, bottom: 6 }', [4, 6], 'start'],
  ['{ right: 4, top: 6 }', [96, 29], 'end'],
  ['center', [50, 17.5], 'middle'],
])('a text 5 high at %s stands on its near sides', (at, [x, y], align) => {
  const [feature] = partWithCuts([`engrave: g, at: ${at}, text: Pier, height: 5`]).drawn.features
  expect(feature!.shape).toMatchObject({ kind: 'engraved-text', at: { x, y }, align, height: { mm: 5 } })
})

test('a line drawing stands where its points say, or with the near sides of its rectangle at the place given', () => {
  const paths = (at: string) => {
    const shape = partWithCuts([
      `engrave: g, ${at}lines: [[[10, 10], [20, 15]], [[12, 10], [12, 15], [14, 15], [12, 10]]]`,
    ]).drawn.features[0]!.shape
    if (shape.kind !== 'engraved-lines') throw new Error(shape.kind)
    return shape.paths
  }
  expect(paths('').map(({ closed }) => closed)).toEqual([false, true])
  expect(paths('')[0]!.segments[0]).toMatchObject({ from: { x: 10, y: 10 }, to: { x: 20, y: 15 } })
  expect(paths('at: { left: 3, top: 1 }, ')[0]!.segments[0]).toMatchObject({
    from: { x: 3, y: 34 },
    to: { x: 13, y: 39 },
  })
})

test.each([
  ['groove: a, along: length, width: 4, depth: unknown', ['depth', 'bottom top']],
  ['rebate: a, edge: top, size: unknown x 3', ['width']],
  ['bevel: a, on: right, angle: unknown, short: front', ['angle']],
  ['chamfer: a, edges: top, size: unknown', ['width', 'depth']],
  ['round-over: a, edges: [top, left], radius: unknown', ['radius']],
  ['engrave: a, text: Pier, height: unknown', ['left right', 'bottom top', 'height']],
])('what the drawing does not give is listed: %s', (cut, lacks) => {
  const { shape } = partWithCuts([cut]).drawn.features[0]!
  if (shape.kind !== 'unplaced') throw new Error(shape.kind)
  const said = shape.missing.map(m =>
    m.kind === 'size' ? m.name : m.kind === 'distance' ? m.between.join(' ') : m.kind,
  )
  expect(said).toEqual(lacks)
})

test('every side may bear a groove', () => {
  for (const side of sides) {
    const at = side === 'left' || side === 'right' ? 'bottom' : 'left'
    const { feature } = seen(partWithCuts([`groove: a, on: ${side}, at: { ${at}: 5 }, width: 2, depth: 1`]))
    expect(feature.face).toBe(side)
  }
})
