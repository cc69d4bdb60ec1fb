import type { Point } from '../../src/geometry/shape/point.ts'
import { type Exact, fromExact, toChain } from '../readback/exact.ts'
import type { ReadBack, ReadChain } from '../readback/read-back.ts'
import { perfect, type Trueness } from './compare.ts'
import { exactEllipse } from './exact-ellipse.ts'
import type { ExactTemplate } from './exact-template.ts'

/** Lines to cut to and rings are this wide, and nothing else in a tile is. */
const narrow = 0.18
const sameWidth = 1e-3

/**
 * Compares the tiles of one drawing, each as read from its page and moved back to the drawing's own millimetres, with the
 * exact template: every line of a tile lies on it, and all of it is on some tile.
 */
export function compareTiles({ cuts, holes, ellipses }: ExactTemplate, tiles: readonly ReadBack[]): Trueness {
  const curves = tiles.flatMap(({ chains }) => chains.filter(isNarrow).flatMap(chain => chain.curves))
  const rings = holes.map(({ centre, radius }) => circle(centre, radius))
  const leaning = ellipses.map(exactEllipse)
  const exact: Exact = { edges: [...cuts, ...rings, ...leaning].flatMap(({ edges }) => edges), closed: false }
  return { ...perfect, outline: Math.max(fromExact(exact, curves), toChain(exact, curves)) }
}

function isNarrow({ paint, dashes, width }: ReadChain): boolean {
  return paint === 'stroke' && dashes.length === 0 && Math.abs(width - narrow) < sameWidth
}

function circle(centre: Point, radius: number): Exact {
  const at = (t: number): Point => ({
    x: centre.x + radius * Math.cos(2 * Math.PI * t),
    y: centre.y + radius * Math.sin(2 * Math.PI * t),
  })
  const distance = (p: Point): number => Math.abs(Math.hypot(p.x - centre.x, p.y - centre.y) - radius)
  return { edges: [{ kind: 'curve', at, distance }], closed: true }
}
