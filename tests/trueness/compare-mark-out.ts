import type { Part } from '../../src/model/part.ts'
import { after, type ReadBack, type ReadChain, type Six, unmoved } from '../readback/read-back.ts'
import { compareTemplate, type Trueness } from './compare.ts'
import { exactTemplate } from './exact-template.ts'
import { inverse, seenThrough } from './on-page.ts'

/** The view's lines stray from where they should be by far less than this, and nothing else is nearer, in millimetres of the paper. */
const slack = 0.5

/**
 * Compares what was read from a file with the front view of a mark-out, which lies at the origin of its drawing and is
 * `factor` of the wood's size; the other views and all dimensions lie around it. The deviations are those on the paper.
 *
 * @throws Error when a line of the view is missing, or there is one too many
 */
export function compareMarkOut(part: Part, placement: Six, factor: number, read: ReadBack): Trueness {
  const exact = exactTemplate(part, 'drawn', unmoved)
  const outline = exact.cuts.flatMap(({ edges }) => edges.flatMap(({ at }) => shares.map(at)))
  const rings = exact.holes.flatMap(({ centre: { x, y }, radius }) => [
    { x: x - radius, y: y - radius },
    { x: x + radius, y: y + radius },
  ])
  const xs = [...outline, ...rings].map(p => p.x)
  const ys = [...outline, ...rings].map(p => p.y)
  const around = slack / factor
  const [left, right] = [Math.min(...xs) - around, Math.max(...xs) + around]
  const [bottom, top] = [Math.min(...ys) - around, Math.max(...ys) + around]
  const isFront = ({ curves }: ReadChain): boolean =>
    curves.every(({ at }) =>
      shares.map(at).every(({ x, y }) => x >= left && x <= right && y >= bottom && y <= top),
    )
  const asWood = seenThrough(inverse(after(placement, [factor, 0, 0, factor, 0, 0])), read)
  const found = compareTemplate(exact, { ...asWood, chains: asWood.chains.filter(isFront) })
  return {
    outline: found.outline * factor,
    centre: found.centre * factor,
    radius: found.radius * factor,
    bars: found.bars,
  }
}

const shares = Array.from({ length: 17 }, (_, i) => i / 16)
