/**
 * What a plan file may be at most. Each is far above what a maker writes; together they bound the time and the
 * memory that any file can take. How long a size may be is the business of the reader of sizes.
 */

/** Bytes of a file. A part with ten cuts takes about 1 kB, so this is room for some two thousand parts. */
export const maxBytes = 2 * 1024 * 1024

/** Words and marks of YAML. A file full of short ones costs more than its bytes say. */
export const maxTokens = 800_000

/** Collections within each other; a plan needs seven. YAML readers recurse, and the stack is finite. */
export const maxNesting = 40

/** Values after every alias is written out: a few lines of aliases of aliases can stand for billions. */
export const maxValues = 500_000

/** Uses of `*name`. Nobody repeats by alias what `let` and `make` repeat better. */
export const maxAliases = 1_000

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

/** Faults listed of one file. Who has more wants to see the first ones. */
export const maxFindings = 100

/** Steps of one outline, and points of one of its curves. */
export const maxSteps = 1_000

/** Joints of one plan, and holes that one pin goes through. */
export const maxJoints = 2_000
export const maxReferences = 200

/** Entries of `confirmed`. */
export const maxConfirmed = 2_000
