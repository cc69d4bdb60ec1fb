/** What the process says to the shell that called it. */
export const exitCode = {
  /** Done. */
  done: 0,
  /** Done, and the check found errors; `print` says so only with --strict. */
  foundErrors: 1,
  /** The call or the plan could not be used, or the program itself is at fault. Nothing was written. */
  unusable: 2,
} as const

export type ExitCode = (typeof exitCode)[keyof typeof exitCode]
