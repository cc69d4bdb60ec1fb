import { expect, test } from 'vitest'
import { partWithCuts } from './model-of.ts'

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
