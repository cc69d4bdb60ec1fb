import { coincident } from '../../number/tolerance.ts'
import type { Bounds } from '../shape/contour.ts'
import type { Point } from '../shape/point.ts'
import { line } from '../shape/segment.ts'
import { segmentBounds } from './bounds.ts'
import type { Chord, Stretch } from './neck-chord.ts'
import { segmentDistance } from './segment-distance.ts'
import { type SegmentTree, someInBox } from './segment-tree.ts'

/**
 * The cut, if it meets no boundary between its ends. If it does, and stands in the middle of an equally narrow
 * stretch, the cut in the middle of the longest part of the stretch that is free.
 */
export function freeCut(tree: SegmentTree, chord: Chord): Chord | undefined {
  if (isFree(tree, chord)) return chord
  const { stretch } = chord
  if (stretch === undefined) return undefined
  const places = placesOfChange(tree, stretch)
  const parts = places.slice(1).map((high, i) => ({ low: places[i]!, high }))
  for (const { low, high } of parts.sort((a, b) => b.high - b.low - (a.high - a.low))) {
    const cut = stretch.cutAt((low + high) / 2)
    const share = (high - low) / (stretch.high - stretch.low)
    if (isFree(tree, cut))
      return { ...cut, stretch: { ...stretch, low, high, length: stretch.length * share } }
  }
  return undefined
}

/** Where along a stretch an edge between its two sides begins or ends: only there can free turn to not free. */
function placesOfChange(tree: SegmentTree, { low, high, cutAt, extent }: Stretch): readonly number[] {
  const box = boxOf([low, (3 * low + high) / 4, (low + high) / 2, (low + 3 * high) / 4, high].map(cutAt))
  const places = [low, high]
  someInBox(tree, box, edge => {
    for (const place of extent(tree.segments[edge]!)) if (place > low && place < high) places.push(place)
    return false
  })
  return places.sort((a, b) => a - b)
}

/** A box around cuts; around an arc's cuts a little more than their ends, for what bulges between them. */
function boxOf(cuts: readonly Pick<Chord, 'first' | 'second'>[]): Bounds {
  const points = cuts.flatMap(c => [c.first, c.second])
  const xs = points.map(p => p.x)
  const ys = points.map(p => p.y)
  const bulge = Math.max(...xs.map(x => x - xs[0]!).map(Math.abs), ...ys.map(y => y - ys[0]!).map(Math.abs))
  return {
    left: Math.min(...xs) - bulge,
    bottom: Math.min(...ys) - bulge,
    right: Math.max(...xs) + bulge,
    top: Math.max(...ys) + bulge,
  }
}

/** Whether a cut meets no boundary between its ends. */
function isFree(
  tree: SegmentTree,
  { first, second, width }: Pick<Chord, 'first' | 'second' | 'width'>,
): boolean {
  if (width <= 4 * coincident) return true
  const inset = (2 * coincident) / width
  const along = (a: Point, b: Point): Point => ({
    x: a.x + (b.x - a.x) * inset,
    y: a.y + (b.y - a.y) * inset,
  })
  const cut = line(along(first, second), along(second, first))
  return !someInBox(
    tree,
    segmentBounds(cut),
    edge => segmentDistance(tree.segments[edge]!, cut).distance === 0,
  )
}
