import type { Segment } from './segment.ts'

/**
 * A chain of edges. Neighbours share their end point: the `to` of one is the very object that is the `from` of
 * the next, and in a closed contour the last leads back to the first.
 */
export type Contour = { readonly segments: readonly Segment[]; readonly closed: boolean }

/**
 * A piece of the plane: what lies inside `outer` and outside every hole. Which contour is a hole is said here
 * and never inferred from the direction in which a contour runs; direction carries no meaning. Regions made by
 * this kernel run their outer contour counter-clockwise and their holes clockwise.
 */
export type Region = { readonly outer: Contour; readonly holes: readonly Contour[] }

/** The smallest upright rectangle around something, in millimetres. */
export type Bounds = {
  readonly left: number
  readonly bottom: number
  readonly right: number
  readonly top: number
}
