import type { ExitCode } from '../exit-code.ts'

/** Told by a command how it ended. */
export type Done = (code: ExitCode) => void
