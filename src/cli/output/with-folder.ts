import { mkdir, rmdir } from 'node:fs/promises'
import { dirname } from 'node:path'
import { CallError, systemCode } from '../call-error.ts'

/**
 * Does something in a folder, which is made where it is missing and taken away again where that fails. The folder it
 * stands in has to be there: a slip of the pen must not grow a tree.
 *
 * @throws CallError where there can be no such folder
 */
export async function withFolder(folder: string, work: () => Promise<void>): Promise<void> {
  const made = await makeFolder(folder)
  try {
    await work()
  } catch (error) {
    if (made) await rmdir(folder).catch(() => undefined)
    throw error
  }
}

async function makeFolder(folder: string): Promise<boolean> {
  try {
    await mkdir(folder)
    return true
  } catch (error) {
    const code = systemCode(error)
    switch (code) {
      case 'EEXIST':
        // if it is no folder, writing into it says so
        return false
      case 'ENOENT':
      case 'ENOTDIR':
        throw new CallError(`there is no folder ${dirname(folder)} to make ${folder} in`)
      case undefined:
        throw error
      default:
        throw new CallError(`the folder ${folder} cannot be made (${code})`)
    }
  }
}
