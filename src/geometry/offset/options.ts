/**
 * What fills the gap at a corner that opens on the side the offset goes to.
 *
 * - `round`: an arc about the corner, so that every point keeps the distance.
 * - `mitre`: the two offset edges run on (an arc along its tangent) until they meet.
 * - `bevel`: a straight edge between the ends of the two offset edges.
 */
export type Join = 'round' | 'mitre' | 'bevel'

/**
 * How the band around an open path ends: in a half circle about the end point, straight across at the end
 * point, or straight across one distance beyond it.
 */
export type End = 'round' | 'flat' | 'square'

/** How corners are filled. */
export type JoinOptions = {
  /** `round` when left out. */
  readonly join?: Join
  /**
   * How far a mitre may reach: the distance from the corner to the mitre's tip as a multiple of the offset, at
   * least 1; a corner that would reach further gets a bevel. 4 when left out, as in SVG.
   */
  readonly mitreLimit?: number
  /** The tag of the edges that fill a corner or close an end; they have none when it is left out. */
  readonly joinTag?: string
}

/** How corners are filled and open ends are closed. */
export type PathOptions = JoinOptions & {
  /** `round` when left out. */
  readonly end?: End
}

/** Source: SVG 2, 13.5.5, the initial value of `stroke-miterlimit`. */
export const usualMitreLimit = 4
