import { unlink, writeFile } from 'node:fs/promises'
import { CallError, systemCode } from '../call-error.ts'
import { writeFault } from './write-files.ts'

/**
 * Writes a text that somebody will go on working at, so never over what is there already.
 *
 * @throws CallError where there is something of that name, or nothing can be written there
 */
export async function writeNewFile(path: string, text: string): Promise<void> {
  try {
    await writeFile(path, text, { flag: 'wx' })
  } catch (error) {
    if (systemCode(error) === 'EEXIST') throw thereAlready(path)
    // half of it may have been written before the room ran out
    if (systemCode(error) === 'ENOSPC') await unlink(path).catch(() => undefined)
    throw writeFault(error, path)
  }
}

export function thereAlready(path: string): CallError {
  return new CallError(`${path} is there already, and nothing is written over it; say another name`)
}
