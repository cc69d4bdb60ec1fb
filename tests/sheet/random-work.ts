import fc from 'fast-check'
import { degrees } from '../../src/number/degrees.ts'

/** What bounds a cut along an edge: how small the smaller side of a rectangle is, and how thick the wood. */
export type Rectangle = { readonly least: number; readonly thickness: number }

const mm = (min: number, max: number): fc.Arbitrary<string> =>
  fc.double({ min, max, noNaN: true }).map(value => value.toFixed(3))

const face = fc.constantFrom('front', 'back')
const edge = fc.constantFrom('bottom', 'top', 'left', 'right')

/** Anywhere on a face, beside the part too; stopped by less than the smallest part is wide. */
const groove = fc
  .tuple(face, edge, mm(0, 120), mm(1, 20), mm(0.5, 6), fc.option(mm(0.5, 1.8)))
  .map(([on, from, at, width, depth, stop]) => {
    const toward = from === 'left' || from === 'right' ? 'top' : 'right'
    const stopped = stop === null ? '' : `, stopped: { ${toward}: ${stop} }`
    return `groove: v#, on: ${on}, at: { ${from}: ${at} }, width: ${width}, depth: ${depth}${stopped}`
  })

const place = fc
  .tuple(fc.constantFrom('left', 'right'), mm(0, 150), fc.constantFrom('bottom', 'top'), mm(0, 150))
  .map(([x, along, y, across]) => `at: { ${x}: ${along}, ${y}: ${across} }`)

const engraved = fc.oneof(
  fc
    .tuple(fc.constantFrom('PIER 7', 'No 2', 'g'), mm(2, 30))
    .map(([text, height]) => `text: ${text}, height: ${height}`),
  fc
    .tuple(mm(1, 40), mm(1, 40))
    .map(([x, y]) => `lines: [[[0.000, 0.000], [${x}, ${y}], [${x}, 0.000], [0.000, ${y}]]]`),
)

const engrave = fc
  .tuple(place, engraved, fc.constantFrom('', ', depth: 0.300'))
  .map(([place, what, depth]) => `engrave: w#, ${place}, ${what}${depth}`)

/** What is worked into a face of wood of any shape. */
export const faceWork = fc.oneof(groove, engrave)

/** No strip takes more of the wood than this, so that two of them leave some. */
const widest = 0.3

/** What is worked along the edges of a rectangle. */
export function edgeWork({ least, thickness }: Rectangle): fc.Arbitrary<string> {
  const wide = mm(Math.min(0.1, widest * least), widest * least)
  const deep = mm(Math.min(0.1, widest * thickness), widest * thickness)
  const steepest = Math.floor(degrees(Math.atan2(widest * least, thickness)))
  const rebate = fc
    .tuple(face, edge, wide, deep)
    .map(([on, edge, width, depth]) => `rebate: t#, on: ${on}, edge: ${edge}, size: ${width} x ${depth}`)
  const chamfer = fc
    .tuple(face, edge, wide, deep)
    .map(([on, edges, width, depth]) => `chamfer: k#, on: ${on}, edges: ${edges}, size: ${width} x ${depth}`)
  const roundOver = fc
    .tuple(face, fc.oneof(edge, fc.constant('all')), wide)
    .map(([on, edges, radius]) => `round-over: a#, on: ${on}, edges: ${edges}, radius: ${radius}`)
  if (steepest < 1) return fc.oneof(rebate, chamfer, roundOver)
  const bevel = fc
    .tuple(edge, fc.integer({ min: 1, max: Math.min(steepest, 40) }), face)
    .map(([on, angle, short]) => `bevel: b#, on: ${on}, angle: ${angle}, short: ${short}`)
  return fc.oneof(rebate, chamfer, roundOver, bevel)
}
