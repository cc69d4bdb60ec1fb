import type { Words } from '../../text/words.ts'

/**
 * How badly a dimension is wanted where there is not room for all: the origin and the whole size before the corners
 * of the outline and the sides of what is cut out, these before holes, and holes before those in the middle of a row.
 */
export type Rank = 0 | 1 | 2 | 3

/** A running dimension: a place along an edge, and what is written there. */
export type Stop = {
  /** The coordinate along the edge, in the drawing's millimetres. */
  readonly at: number
  /** How far out its extension line begins; within the view, less than nothing. */
  readonly from: number
  readonly words: Words
  readonly rank: Rank
  /** Whether a table has it too: what is left out of the drawing then needs no words of its own. */
  readonly tabled?: boolean
}

/**
 * How many of a run are drawn: as many as can be read, or only those whose lettering stands beside what it measures, which
 * makes the drawing no larger than its view asks for.
 */
export type Crowding = 'all that are read' | 'those close by'

/** Dimensions that all start at one place. */
export type Run = { readonly origin: number; readonly stops: readonly Stop[] }

/** The distance between two places, for what has to fit another part. */
export type Between = {
  readonly from: number
  readonly to: number
  readonly words: Words
  readonly says: string
}
