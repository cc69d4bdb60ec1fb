import type { Contour, Region } from '../geometry/shape/contour.ts'
import type { Segment } from '../geometry/shape/segment.ts'

/**
 * The tag of the line that a strip along an edge begins with, and of the sides of a groove: what is scribed on the
 * wood and worked to. The rest of the boundary lies on edges of the wood. No edge has this name, for the blanks in it.
 */
export const lineOfStrip = 'line of the cut'

/** The tag of the line where a strip or groove stops. */
export const endOfStrip = 'end of the cut'

/** The lines of a region that are worked to, each whole from where it leaves the edge of the wood to where it comes back. */
export function workedLines({ outer, holes }: Region): readonly Contour[] {
  return [outer, ...holes].flatMap(contour => runsOf(contour, isWorked))
}

/** The rest of the boundary: where the region lies on edges of the wood. */
export function edgeLines({ outer, holes }: Region): readonly Contour[] {
  return [outer, ...holes].flatMap(contour => runsOf(contour, s => !isWorked(s)))
}

function isWorked({ tag }: Segment): boolean {
  return tag === lineOfStrip || tag === endOfStrip
}

/** The stretches of a closed contour whose segments are wanted; all of it is one closed stretch. */
function runsOf({ segments }: Contour, wanted: (s: Segment) => boolean): readonly Contour[] {
  const first = segments.findIndex(s => !wanted(s))
  if (first < 0) return [{ segments, closed: true }]
  const runs: Segment[][] = []
  let open = false
  for (const segment of [...segments.slice(first), ...segments.slice(0, first)]) {
    const goesOn = wanted(segment)
    if (goesOn && open) runs.at(-1)!.push(segment)
    else if (goesOn) runs.push([segment])
    open = goesOn
  }
  return runs.map(run => ({ segments: run, closed: false }))
}
