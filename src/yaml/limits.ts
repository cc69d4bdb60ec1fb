/**
 * What a file may be at most. Each is far above what a maker writes; together they bound the time and the memory
 * that any file can take.
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

/** Faults listed of one file. Who has more wants to see the first ones. */
export const maxFindings = 100
