import type { Contour, Region } from '../shape/contour.ts'
import { reverseContour } from '../shape/reverse.ts'
import { signedArea } from './area.ts'

/** The closed contour run counter-clockwise. */
export function counterClockwise(contour: Contour): Contour {
  return signedArea(contour) < 0 ? reverseContour(contour) : contour
}

/** The closed contour run clockwise. */
export function clockwise(contour: Contour): Contour {
  return signedArea(contour) > 0 ? reverseContour(contour) : contour
}

/** The region with its outer contour counter-clockwise and its holes clockwise: the wood is on the left. */
export function orientRegion(region: Region): Region {
  return { outer: counterClockwise(region.outer), holes: region.holes.map(clockwise) }
}
