import { lineStyles } from '../../src/drawing/line-role.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { type Exact, fromExact, toChain } from '../readback/exact.ts'
import type { ReadBack, ReadChain } from '../readback/read-back.ts'
import { offEllipse } from './exact-ellipse.ts'
import type { Ellipse, Ring as ExactRing, ExactTemplate } from './exact-template.ts'

/** The worst deviations in one file, in millimetres. */
export type Trueness = {
  /** Every point of the outline, the slots and the notches. */
  readonly outline: number
  readonly centre: number
  readonly radius: number
  /** The ends of the scale bars, and how far they slope. */
  readonly bars: number
}

export const perfect: Trueness = { outline: 0, centre: 0, radius: 0, bars: 0 }

export function worse(a: Trueness, b: Trueness): Trueness {
  return {
    outline: Math.max(a.outline, b.outline),
    centre: Math.max(a.centre, b.centre),
    radius: Math.max(a.radius, b.radius),
    bars: Math.max(a.bars, b.bars),
  }
}

/**
 * Compares what was read from a file with one template.
 *
 * @throws Error when a line to cut or bore by is missing, or there is one too many
 */
export function compareTemplate(
  { cuts, holes, ellipses, mouths }: ExactTemplate,
  { chains }: ReadBack,
): Trueness {
  const unused = new Set(chains.filter(isCutBy))
  const thin = new Set(chains.filter(chain => chain.closed && isThin(chain)))
  const take = (name: string, distance: (chain: ReadChain) => number, among = unused): ReadChain => {
    let nearest: { chain: ReadChain; distance: number } | undefined
    for (const chain of among) {
      const found = distance(chain)
      if (nearest === undefined || found < nearest.distance) nearest = { chain, distance: found }
    }
    if (nearest === undefined) throw new Error(`the file has no more lines for ${name}`)
    among.delete(nearest.chain)
    return nearest.chain
  }

  let found = perfect
  const compareRing = ({ name, centre, radius }: ExactRing, among: Set<ReadChain>): void => {
    const ring = ringOf(take(name, chain => ringDistance(ringOf(chain), { centre, radius }), among))
    const off = Math.hypot(ring.centre.x - centre.x, ring.centre.y - centre.y)
    found = worse(found, { ...perfect, centre: off, radius: Math.abs(ring.radius - radius) + ring.roundness })
  }
  for (const hole of holes) compareRing(hole, unused)
  for (const mouth of mouths) compareRing(mouth, thin)
  for (const ellipse of ellipses) {
    const { curves } = take(ellipse.name, chain => boxDistance(boxOfEllipse(ellipse), boxOf(pointsOf(chain))))
    const radius = Math.max(...curves.flatMap(c => samples.map(t => offEllipse(ellipse, c.at(t)))))
    found = worse(found, {
      ...perfect,
      radius,
      outline: boxDistance(boxOfEllipse(ellipse), boxOf(pointsOf({ curves }))),
    })
  }
  for (const cut of cuts) {
    const box = boxOf(cut.edges.flatMap(e => samples.map(e.at)))
    const { curves } = take('an outline', chain => boxDistance(box, boxOf(pointsOf(chain))))
    const outline = Math.max(fromExact(cut, curves), toChain(cut, curves), corners(cut, curves))
    found = worse(found, { ...perfect, outline })
  }
  if (unused.size > 0)
    throw new Error(`the file has ${unused.size} lines to cut by that the part does not have`)
  return found
}

/** Closed lines that part the wood; thin ones show where a rim is eased, what is engraved, or the mouth of a hole. */
function isCutBy(chain: ReadChain): boolean {
  return chain.paint === 'stroke' && chain.closed && chain.dashes.length === 0 && !isThin(chain)
}

function isThin({ width }: ReadChain): boolean {
  return Math.abs(width - lineStyles.thin.width) < 0.01
}

const samples = Array.from({ length: 9 }, (_, i) => i / 8)

const pointsOf = ({ curves }: Pick<ReadChain, 'curves'>): readonly Point[] =>
  curves.flatMap(c => samples.map(c.at))

/** How far each corner of the exact contour is from the nearest end of a curve in the file. */
function corners({ edges }: Exact, curves: ReadChain['curves']): number {
  const ends = curves.map(c => c.at(0))
  return Math.max(
    ...edges.map(edge => {
      const { x, y } = edge.at(0)
      return Math.min(...ends.map(end => Math.hypot(end.x - x, end.y - y)))
    }),
  )
}

type Ring = { readonly centre: Point; readonly radius: number; readonly roundness: number }

/** The circle through a closed line: the middle of its box, the mean distance, and the most that any point strays. */
function ringOf(chain: ReadChain): Ring {
  const points = pointsOf(chain)
  const [left, bottom, right, top] = boxOf(points)
  const centre = { x: (left + right) / 2, y: (bottom + top) / 2 }
  const radii = points.map(p => Math.hypot(p.x - centre.x, p.y - centre.y))
  const radius = radii.reduce((sum, r) => sum + r, 0) / radii.length
  return { centre, radius, roundness: Math.max(...radii.map(r => Math.abs(r - radius))) }
}

function ringDistance(ring: Ring, { centre, radius }: { centre: Point; radius: number }): number {
  return (
    Math.hypot(ring.centre.x - centre.x, ring.centre.y - centre.y) +
    Math.abs(ring.radius - radius) +
    ring.roundness
  )
}

/** Source: half the box of a turned ellipse is √(a²·cos² + b²·sin²) by √(a²·sin² + b²·cos²). */
function boxOfEllipse({ centre: { x, y }, long, short, angle }: Ellipse): Box {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const w = Math.hypot(long * c, short * s)
  const h = Math.hypot(long * s, short * c)
  return [x - w, y - h, x + w, y + h]
}

type Box = readonly [left: number, bottom: number, right: number, top: number]

function boxOf(points: readonly Point[]): Box {
  const xs = points.map(p => p.x)
  const ys = points.map(p => p.y)
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
}

function boxDistance(a: Box, b: Box): number {
  return Math.max(...a.map((side, i) => Math.abs(side - b[i]!)))
}
