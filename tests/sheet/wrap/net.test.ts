import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apply } from '../../../src/geometry/shape/matrix.ts'
import { axisOf } from '../../../src/model/bore/axis.ts'
import { faceOf, type Part, type Piece } from '../../../src/model/part.ts'
import { type Point3, toPart } from '../../../src/model/pose.ts'
import { blockOf } from '../../../src/sheet/wrap/block.ts'
import { netOf } from '../../../src/sheet/wrap/net.ts'
import { onFaces } from '../../../src/sheet/wrap/on-faces.ts'
import { enteringOn } from '../../../src/sheet/wrap/panel-marks.ts'
import { boreInPart, modelOf, onlyPart } from '../../model/model-of.ts'
import { randomBlock } from '../random-block.ts'
import { foldedUp } from './fold-up.ts'

/** From the drawn or mirrored piece as planned to the block as measured: every distance from a reference side is kept. */
function onMeasured({ part, solid }: { part: Part; solid: Piece['solid'] }, p: Point3): Point3 {
  const real = part.measured ?? part
  const highEnd = solid.faces[part.referenceEnd].pose.out.x > 0
  return {
    x: highEnd ? real.length.mm - (part.length.mm - p.x) : p.x,
    y: part.faceEdge === 'top' ? real.width.mm - (part.width.mm - p.y) : p.y,
    z: real.thickness.mm - (part.thickness.mm - p.z),
  }
}

/** The same place on its face, which lies where the block ends. */
function onFace(part: Part, { x, y, z }: Point3, out: Point3): Point3 {
  const real = part.measured ?? part
  const level = (at: number, way: number, size: number): number =>
    way > 0.999 ? size : way < -0.999 ? 0 : at
  return {
    x: level(x, out.x, real.length.mm),
    y: level(y, out.y, real.width.mm),
    z: level(z, out.z, real.thickness.mm),
  }
}

function expectAt(found: Point3, wanted: Point3): void {
  for (const axis of ['x', 'y', 'z'] as const) expect(Math.abs(found[axis] - wanted[axis])).toBeLessThan(1e-9)
}

function expectFoldsUp(part: Part): void {
  for (const { solid } of part.pieces) {
    const block = blockOf(part, solid)
    const shown = onFaces(solid, block)
    const panels = netOf(block, [...shown.keys()], part.shape === 'rectangle')
    const front = (part.measured ?? part).thickness.mm
    let folded = 0
    for (const panel of panels) {
      const on = shown.get(panel.face.id)
      if (on === undefined || (panel.fold === undefined && panel.face.id !== 'front')) continue
      for (const feature of enteringOn(panel, on)) {
        if (feature.shape.kind !== 'bore') continue
        const planned = solid.features.find(({ id }) => id === feature.id)!
        const { out } = faceOf(solid, planned.face).pose
        const kept = onMeasured({ part, solid }, boreInPart(solid, planned))
        const wanted = part.shape === 'rectangle' ? onFace(part, kept, out) : kept
        expectAt(foldedUp(panels, panel, feature.shape.centre, front), wanted)
        folded++
      }
      for (const { id, bore } of on.exits) {
        const planned = solid.features.find(feature => feature.id === id)!
        if (planned.shape.kind !== 'bore') continue
        // on the axis, wherever the block ends
        const { from, into } = axisOf(planned.shape, faceOf(solid, planned.face).pose)
        const start = onMeasured({ part, solid }, from)
        const end = foldedUp(panels, panel, apply(panel.toPaper, bore.centre), front)
        const d = { x: end.x - start.x, y: end.y - start.y, z: end.z - start.z }
        const along = d.x * into.x + d.y * into.y + d.z * into.z
        expectAt(d, { x: into.x * along, y: into.y * along, z: into.z * along })
        expect(along).toBeGreaterThan(0)
      }
    }
    expect(folded).toBeGreaterThan(0)
  }
}

test('folding the net of any block back up puts every centre where the model has it, and every exit on the axis of its hole', () => {
  fc.assert(
    fc.property(randomBlock, text => {
      expectFoldsUp(onlyPart(modelOf(text)))
    }),
    { numRuns: 300 },
  )
})

const shaped = `paperjig: 1
title: Gate
units: mm
parts:
  brace:
    thickness: 18
    make: 2
    mirrored: true
    outline:
      - { to: [0, 0] }
      - { to: [90, 0], name: foot }
      - { to: [60, 70], name: slope }
      - { to: [0, 50], name: roof }
    cuts:
      - { row: a, on: slope, at: { start: 12, front: 6 }, toward: end, spacing: 15, count: 3, diameter: 4, depth: 9 }
      - { hole: b, on: roof, at: { end: 14, front: center }, diameter: 5, depth: 9 }
      - { hole: c, on: foot, at: { start: 30, back: 7 }, diameter: 5 }
      - { hole: d, at: { left: 40, bottom: 20 }, diameter: 6 }
`

test('the net of a shaped part folds up along its straight edges', () => {
  const part = onlyPart(modelOf(shaped))
  expectFoldsUp(part)
  const block = blockOf(part, part.drawn)
  const panels = netOf(block, [...onFaces(part.drawn, block).keys()], false)
  const hung = panels.filter(({ fold }) => fold?.on === 'front').map(({ face }) => face.id)
  expect(hung.toSorted()).toEqual(['edge:foot', 'edge:roof', 'edge:slope'])
})

test('a panel that would lie over another one stands apart', () => {
  const part = onlyPart(
    modelOf(`paperjig: 1
title: Gate
units: mm
parts:
  notched:
    thickness: 30
    outline:
      - { to: [0, 0] }
      - { to: [90, 0], name: foot }
      - { to: [90, 60] }
      - { to: [60, 60] }
      - { to: [60, 20], name: inner }
      - { to: [40, 20], name: floor }
      - { to: [40, 60] }
      - { to: [0, 60] }
    cuts:
      - { hole: a, on: inner, at: center, diameter: 4, depth: 9 }
      - { hole: b, on: foot, at: center, diameter: 5, depth: 9 }
`),
  )
  const block = blockOf(part, part.drawn)
  const panels = netOf(block, ['edge:inner', 'edge:foot'], false)
  expect(panels.map(({ face, fold }) => [face.id, fold?.on])).toEqual([
    ['front', undefined],
    ['edge:foot', 'front'],
    ['edge:inner', undefined],
  ])
})

test('a block that was measured has a net of that size', () => {
  const part = onlyPart(
    modelOf(`paperjig: 1
title: Gate
units: mm
parts:
  post: { size: 100 x 40 x 20, measured: 100.5 x 39.8 x 20.2, wrap: net, face-edge: top, cuts: [ { hole: a, on: top, at: { left: 10, front: 6 }, diameter: 3, depth: 8 } ] }
`),
  )
  const panels = netOf(blockOf(part, part.drawn), ['top'], true)
  const [front, top] = panels
  expect(front!.face.region.outer.segments.map(({ from }) => from)).toEqual([
    { x: 0, y: 0 },
    { x: 100.5, y: 0 },
    { x: 100.5, y: 39.8 },
    { x: 0, y: 39.8 },
  ])
  expect(top!.fold).toEqual({ on: 'front', from: { x: 0, y: 39.8 }, to: { x: 100.5, y: 39.8 } })
  expect(toPart(top!.face.pose, { x: 0, y: 0 })).toEqual({ x: 0, y: 39.8, z: 20.2 })
})
