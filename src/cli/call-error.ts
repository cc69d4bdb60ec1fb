/** The call cannot be done as it stands. The message is one sentence for who made it, without a full stop. */
export class CallError extends Error {
  override readonly name = 'CallError'
}

/** The system's own short word for what went wrong, such as `ENOENT`. */
export function systemCode(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined
}
