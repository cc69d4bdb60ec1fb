/** What a plan may hold at most. Each is far above what a maker writes. */

/** Parts, and kinds of stock, of one plan. */
export const maxParts = 2_000

/** Entries of `let`. */
export const maxNames = 2_000

/** Cuts of one part. */
export const maxCuts = 2_000

/** Holes of one row. */
export const maxRowCount = 1_000

/** Pieces of one part, and boards of one kind of stock. */
export const maxPieces = 1_000

/** Characters of a title, label or wood: the width of a page. A note may have ten times as many. */
export const maxLabelLength = 200
export const maxNoteLength = 2_000

/** Characters of an id or name; it is printed beside a letter on the part. */
export const maxIdLength = 64

/** Steps of one outline, and points of one of its curves. */
export const maxSteps = 1_000

/** Lines of one engraving, and points of one of them. */
export const maxEngravedLines = 1_000

/** Joints of one plan, and holes that one pin goes through. */
export const maxJoints = 2_000
export const maxReferences = 200

/** Entries of `confirmed`. */
export const maxConfirmed = 2_000
