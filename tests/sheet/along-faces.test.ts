import { expect, test } from 'vitest'
import type { Mark } from '../../src/drawing/mark.ts'
import { boundsOfRegions, contourBounds } from '../../src/geometry/measure/bounds.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import { planOf, planWithCuts } from '../model/model-of.ts'
import { firstDrawing, keyText, said, sheetsOf } from './sheets-of.ts'

const inches = (cut: string) => `paperjig: 1
title: Loom
units: inch
parts: { cheek: { size: 6 x 3 1/2 x 3/4, cuts: [ { ${cut} } ] } }
`

/** In the words of the shop. The front of a bevel is 3/4·tan(15°) = 0.20096 in shorter. Source: the right triangle under the slope. */
test.each([
  ['groove: g, at: { bottom: 3/8 }, width: 1/8, depth: 3/16', 'groove 1/8" wide, 3/16" deep'],
  [
    'groove: g, at: { bottom: 1 }, width: 1/4, depth: ~1/8, stopped: { left: 1 }',
    'stopped groove 1/4" wide, ~1/8" deep',
  ],
  ['rebate: r, edge: top, size: 1/4 x 3/8', 'rebate 1/4" wide, 3/8" deep'],
  [
    'rebate: r, on: top, edge: front, size: 1/4 x 3/8, stopped: { right: 1 }',
    'stopped rebate 3/8" wide, 1/4" deep',
  ],
  [
    'bevel: b, on: right, angle: 15, short: front',
    'bevel 15°, blade tilted 15°, front ≈ 13/64" (0.201") shorter',
  ],
  ['bevel: b, on: top, angle: 45, short: back', 'bevel 45°, blade tilted 45°, back 3/4" shorter'],
  ['chamfer: c, edges: all, size: 1/16', 'chamfer 1/16"'],
  ['chamfer: c, edges: top, size: 1/16 x 1/8', 'chamfer 1/16" wide, 1/8" down the edge'],
  ['round-over: o, edges: [top, left], radius: 1/8', 'round over, radius 1/8"'],
  ['engrave: e, at: center, text: No 2, height: 1/2', 'engrave "No 2", 1/2" high'],
  ['engrave: e, lines: [[[1, 1], [2, 2]]], depth: 1/32', 'engrave the lines, 1/32" deep'],
])('{ %s } is said as "%s"', (cut, words) => {
  expect(said(firstDrawing(inches(cut)))).toContain(words)
})

/** What is drawn for one cut of the plank of 100 x 40 x 20, by the kind of its lines. */
function linesOf(cuts: readonly string[], role: string, subject = 'plank.a'): readonly Contour[] {
  const { marks } = firstDrawing(planWithCuts(cuts))
  return marks.flatMap(m => (m.kind === 'path' && m.role === role && m.subject === subject ? m.contours : []))
}

const box = (contours: readonly Contour[]) => {
  const bounds = contours.map(contourBounds)
  return {
    left: Math.min(...bounds.map(b => b.left)),
    right: Math.max(...bounds.map(b => b.right)),
    bottom: Math.min(...bounds.map(b => b.bottom)),
    top: Math.max(...bounds.map(b => b.top)),
  }
}

test('a bevel that makes the front shorter is cut to its line on the front, and the end of the back is dashed', () => {
  const cuts = ['bevel: a, on: right, angle: 45, short: front']
  expect(box(linesOf(cuts, 'cut', 'plank'))).toMatchObject({ left: 0, right: 80 })
  expect(box(linesOf(cuts, 'hidden'))).toEqual({ left: 80, right: 100, bottom: 0, top: 40 })
})

test('a bevel that makes the back shorter leaves the outline whole, and its line on the back is dashed inside', () => {
  const cuts = ['bevel: a, on: right, angle: 45, short: back']
  expect(box(linesOf(cuts, 'cut', 'plank'))).toMatchObject({ left: 0, right: 100 })
  expect(box(linesOf(cuts, 'hidden'))).toEqual({ left: 80, right: 80, bottom: 0, top: 40 })
})

test('under a bevel the paper is cut off outside the longer face, and the reference end stands where that ends', () => {
  const { marks } = firstDrawing(planWithCuts(['bevel: a, on: left, angle: 45, short: front']))
  const rough = marks.flatMap(m => (m.kind === 'path' && m.role === 'rough-cut' ? m.contours : []))
  expect(box(rough).left).toBeLessThan(0)
  const datum = marks.find(m => m.subject === 'reference-end') as Mark & { kind: 'fill' }
  expect(boundsOfRegions(datum.regions).left).toBeCloseTo(0, 9)
  expect(keyText(firstDrawing(planWithCuts(['bevel: a, on: left, angle: 45, short: front'])))).toContain(
    'Dashed: where the back ends at a bevel. Sizes and places are those of the longer face.',
  )
})

test('the mirrored template has the bevel at the other end', () => {
  const mirrored = sheetsOf(
    planOf('    make: 2\n    mirrored: true\n    cuts: [{ bevel: a, on: right, angle: 45, short: front }]\n'),
  )[1]!.drawings[0]
  const hidden = mirrored.marks.flatMap(m => (m.kind === 'path' && m.role === 'hidden' ? m.contours : []))
  expect(box(hidden)).toMatchObject({ left: 0, right: 20 })
})

test('a groove or rebate is drawn by its lines, open so that no machine takes them for a shape to cut out', () => {
  for (const cut of [
    'groove: a, at: { bottom: 10 }, width: 4, depth: 6',
    'groove: a, at: { bottom: 10 }, width: 4, depth: 6, stopped: { left: 9, right: 9 }',
    'rebate: a, edge: top, size: 4 x 6, stopped: { left: 9 }',
  ]) {
    const lines = linesOf([cut], 'cut')
    expect(lines.length).toBeGreaterThan(0)
    expect(lines.every(({ closed }) => !closed)).toBe(true)
  }
})

test('a chamfer or round-over shows thin where it begins, and the outline stays', () => {
  expect(box(linesOf(['chamfer: a, edges: top, size: 3'], 'thin'))).toEqual({
    left: 0,
    right: 100,
    bottom: 37,
    top: 37,
  })
  expect(box(linesOf(['round-over: a, edges: all, radius: 3'], 'thin'))).toEqual({
    left: 3,
    right: 97,
    bottom: 3,
    top: 37,
  })
  expect(box(linesOf(['round-over: a, edges: all, radius: 3'], 'cut', 'plank'))).toMatchObject({
    left: 0,
    right: 100,
  })
})

test('an engraved text stands with its near side and its capitals where the plan puts them', () => {
  const letters = box(linesOf(['engrave: a, at: { right: 10, top: 5 }, text: HH, height: 8'], 'thin'))
  expect(letters.top).toBeCloseTo(35, 2)
  expect(letters.bottom).toBeCloseTo(27, 2)
  expect(letters.right).toBeCloseTo(90, 9)
  const middle = box(linesOf(['engrave: a, at: center, text: HH, height: 8'], 'thin'))
  expect((middle.left + middle.right) / 2).toBeCloseTo(50, 9)
})

test('what is engraved is on the layer of that name alone', () => {
  const { marks } = firstDrawing(
    planWithCuts([
      'engrave: a, at: center, text: Pier, height: 8',
      'groove: b, at: { bottom: 2 }, width: 4, depth: 6',
    ]),
  )
  expect(new Set(marks.filter(m => m.layer === 'engrave').map(m => m.subject))).toEqual(new Set(['plank.a']))
  expect(
    marks.filter(m => m.subject === 'plank.a' && m.layer !== 'text').every(m => m.layer === 'engrave'),
  ).toBe(true)
})

test('no mark that is to last stands in a groove or a rebate', () => {
  const { marks } = firstDrawing(
    planWithCuts([
      'rebate: a, edge: bottom, size: 8 x 6',
      'groove: b, at: center, along: length, width: 14, depth: 6',
    ]),
  )
  for (const mark of marks) {
    if (mark.kind !== 'text' || mark.subject !== 'piece') continue
    expect(mark.at.y < 12 || mark.at.y > 27 || mark.at.x > 100).toBe(true)
  }
  expect(keyText({ marks } as ReturnType<typeof firstDrawing>)).toContain('The face edge is the lower one.')
})

test('what is worked into the back is said to be missing from this paper, a bevel is not', () => {
  const key = keyText(
    firstDrawing(
      planWithCuts([
        'rebate: a, on: back, edge: top, size: 4 x 6',
        'bevel: b, on: left, angle: 9, short: back',
      ]),
    ),
  )
  expect(key).toContain('On other faces, not on this paper: a on back.')
  expect(key).not.toContain('b on back')
  expect(key).not.toContain('from the back')
})
