import { pointAt } from '../measure/along.ts'
import { contourBounds } from '../measure/bounds.ts'
import { pointInContour } from '../measure/inside.ts'
import type { Bounds, Contour, Region } from '../shape/contour.ts'

/** Where a contour lies among others: the smallest that holds it, and by how many it is held. */
export type Nesting = { readonly parent: number | undefined; readonly depth: number }

/**
 * Which closed contour lies in which. Contours that touch or share edges are told apart by where the rest of
 * them lies; of two that coincide the later lies in the earlier. Contours must not cross each other
 * (`contourFacts` says whether they do).
 */
export function nesting(contours: readonly Contour[]): readonly Nesting[] {
  const bounds = contours.map(contourBounds)
  const holders = contours.map((_, i) =>
    contours.flatMap((_, j) => (i !== j && holds(contours, bounds, j, i) ? [j] : [])),
  )
  return holders.map(list => ({
    depth: list.length,
    // the innermost holder is the one that is itself held most often
    parent: list.reduce<number | undefined>(
      (best, j) => (best === undefined || holders[j]!.length > holders[best]!.length ? j : best),
      undefined,
    ),
  }))
}

/** Closed contours as regions: those at an even depth bound wood, those at an odd depth the holes in it. */
export function regionsOf(contours: readonly Contour[]): readonly Region[] {
  const nest = nesting(contours)
  return contours.flatMap((outer, i) =>
    nest[i]!.depth % 2 === 0
      ? [{ outer, holes: contours.filter((_, j) => nest[j]!.depth % 2 === 1 && nest[j]!.parent === i) }]
      : [],
  )
}

/** Shares of a segment at which it is asked on which side of another contour it lies. */
const shares = [0.5, 0.21, 0.83]

function holds(
  contours: readonly Contour[],
  bounds: readonly Bounds[],
  outer: number,
  inner: number,
): boolean {
  if (!boxHolds(bounds[outer]!, bounds[inner]!)) return false
  for (const s of contours[inner]!.segments) {
    for (const share of shares) {
      const side = pointInContour(contours[outer]!, pointAt(s, share))
      if (side !== 'on') return side === 'inside'
    }
  }
  // every point asked about lies on the other: the two coincide
  return outer < inner
}

function boxHolds(outer: Bounds, inner: Bounds): boolean {
  return (
    outer.left <= inner.right &&
    outer.right >= inner.left &&
    outer.bottom <= inner.top &&
    outer.top >= inner.bottom
  )
}
