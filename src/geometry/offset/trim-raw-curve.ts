import type { Region } from '../shape/contour.ts'
import { failure, type Outcome, success } from '../shape/outcome.ts'
import { buildBoxTree } from './box-tree.ts'
import { findCrossings } from './find-crossings.ts'
import { nestContours } from './nest-contours.ts'
import { overlayCurve } from './overlay-curve.ts'
import type { RawCurve } from './raw-curve.ts'
import { chainContour, ringContour } from './ring-contour.ts'
import { trimByWinding } from './trim.ts'

/**
 * The regions of positive winding number of a raw offset curve.
 *
 * Most curves cross themselves plainly or not at all and are trimmed by walking along them, which takes little
 * more time than looking for the crossings. Where edges touch, overlap or meet in one point, the sign of a
 * calculated number could be wrong; such a curve goes through the full arrangement.
 */
export function trimRawCurve(
  raw: RawCurve,
  joinTag: string | undefined,
  asked: { readonly operation: string; readonly input: unknown },
): Outcome<readonly Region[]> {
  const { curve, edges, spare } = raw
  const origin = { edges, joinTag }
  const tree = buildBoxTree(curve, spare)
  const extent = tree.boxes.length >= 4 ? tree.boxes.subarray(tree.boxes.length - 4) : []
  if (!extent.every(Number.isFinite)) return failure({ ...asked, reason: 'not-finite', facts: {} })
  const crossings = findCrossings(curve, tree)
  const boundary = crossings === undefined ? undefined : trimByWinding(curve, tree, crossings)
  if (boundary === undefined) return overlayCurve(curve, origin, asked)
  const contours = boundary.chains.map(([begin, end]) => chainContour(curve, begin, end, origin))
  for (const [begin, end] of boundary.rings) {
    contours.push(ringContour(curve, boundary.parts, begin, end, origin))
  }
  return success(nestContours(contours))
}
