import { CallError } from '../call-error.ts'

/** What stands behind -o, held to be a name that a file or folder can have. */
export function namedOutput(output: string | undefined, kind: 'file' | 'folder'): string | undefined {
  if (output === '') throw new CallError(`the name behind -o is empty; it wants the name of a ${kind}`)
  if (kind === 'file' && output?.endsWith('/')) {
    throw new CallError(`${output} names a folder; -o wants the name of a file`)
  }
  return output
}
