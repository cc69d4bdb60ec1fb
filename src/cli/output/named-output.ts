import { CallError } from '../call-error.ts'

/** What stands behind -o or its like, held to be a name that a file or folder can have. */
export function namedOutput(
  output: string | undefined,
  kind: 'file' | 'folder',
  option = '-o',
): string | undefined {
  if (output === '') throw new CallError(`the name behind ${option} is empty; it wants the name of a ${kind}`)
  if (kind === 'file' && output?.endsWith('/')) {
    throw new CallError(`${output} names a folder; ${option} wants the name of a file`)
  }
  return output
}
