/**
 * Regions grown and shrunk, and bands along paths, with arcs that stay arcs.
 *
 * ## How it works
 *
 * 1. `offset-pieces.ts` moves every edge by the distance. An arc that bends toward the offset with a radius no
 *    greater than the distance becomes its centre: nothing ever turns inside out.
 * 2. `joints.ts` tells which corners open toward the offset and which close. `raw-chain.ts` fills the open ones
 *    (`join-corner.ts`) and leads the curve through the corner itself where they close. By construction the
 *    winding number of this raw curve at a point is that of the shape, plus or minus the number of bands and
 *    corner sectors over the point; so the offset is where it is positive.
 * 3. `trim-corner.ts` cuts the two pieces at a closed corner off against each other where it is plain that only
 *    a loop covered twice is left out. After that most curves cross themselves seldom or never.
 * 4. `box-tree.ts` and `find-crossings.ts` find what crossings are left. If all are plain, `trim.ts` walks along
 *    the curve: the winding number changes by one at each crossing, and one ray (`winding-number.ts`) gives it at
 *    the start of each chain. The stretches between 0 and 1 make up the result.
 * 5. Where edges touch, overlap, or several meet in one point, the sign of a calculated number must not decide:
 *    `overlay-curve.ts` hands the curve to the arrangement of `../boolean/`, which snaps crossings. Should that
 *    contradict itself, the distance is changed by a few `coincident` and all is done again (`offset.ts`).
 */
export { ringAlongPath, slotAlongPath } from './along-path.ts'
export { offsetPath, offsetRegion, offsetRegions } from './offset.ts'
export type { End, Join, JoinOptions, PathOptions } from './options.ts'
export { usualMitreLimit } from './options.ts'
