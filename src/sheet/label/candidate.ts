import { joinBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { grown } from './clear-space.ts'
import { clearance } from './find-place.ts'
import { boxesOverlap, boxMeetsStretch, type Stretch, stretchBounds, stretchesCross } from './touch.ts'

/** One way to put a label: the box of its lettering, its leader where it stands off, and how bad that is. */
export type Candidate = { readonly box: Bounds; readonly leader?: Stretch; readonly cost: number }

/** White between a leader and the lettering that it passes. */
const leaderWhite = 0.5

/**
 * Whether candidates of two labels cannot both stand: their boxes come nearer than the white that is kept, or a
 * leader crosses a box or the other leader.
 */
export function conflict(a: Candidate, b: Candidate): boolean {
  return (
    // half of the white on either side, so that rounding cannot make the two disagree
    boxesOverlap(grown(a.box, clearance / 2), grown(b.box, clearance / 2)) ||
    (a.leader !== undefined && boxMeetsStretch(grown(b.box, leaderWhite), ...a.leader)) ||
    (b.leader !== undefined && boxMeetsStretch(grown(a.box, leaderWhite), ...b.leader)) ||
    (a.leader !== undefined && b.leader !== undefined && stretchesCross(a.leader, b.leader))
  )
}

/** Candidates whose reaches do not touch are in no conflict. */
export function reachOf({ box, leader }: Candidate): Bounds {
  const white = grown(box, clearance)
  return leader === undefined ? white : joinBounds(white, stretchBounds(leader))
}
