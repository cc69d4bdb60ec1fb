import { randomBytes } from 'node:crypto'
import * as nodeFiles from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { CallError, systemCode } from '../call-error.ts'

/** A file to be: where, and what is in it. */
export type Output = { readonly path: string; readonly bytes: Uint8Array }

/** What is asked of the file system, so that a test can let it fail. */
export type Files = Pick<typeof nodeFiles, 'lstat' | 'realpath' | 'rename' | 'unlink' | 'writeFile'>

/**
 * Writes files so that there is never half of one: each is written under another name beside its place, and only when
 * all are whole they are renamed. Where something fails, everything is as it was before.
 *
 * @throws CallError where something cannot be written, with the system's reason
 */
export async function writeFiles(outputs: readonly Output[], files: Files = nodeFiles): Promise<void> {
  const undo: (() => Promise<void>)[] = []
  const finish: (() => Promise<void>)[] = []
  let current = ''
  try {
    const written: { readonly temporary: string; readonly place: Place }[] = []
    for (const { path, bytes } of outputs) {
      current = path
      const place = await placeOf(path, files)
      if (place.kind === 'device') {
        // a device or a pipe has no half-written state, and must not be replaced by a file
        await files.writeFile(place.path, bytes)
        continue
      }
      const temporary = besides(place.path, 'part')
      undo.push(() => files.unlink(temporary))
      await files.writeFile(temporary, bytes, { flag: 'wx' })
      written.push({ temporary, place })
    }
    for (const { temporary, place } of written) {
      current = place.path
      if (place.kind === 'old' && written.length > 1) {
        const kept = besides(place.path, 'old')
        await files.rename(place.path, kept)
        undo.push(() => files.rename(kept, place.path))
        finish.push(() => files.unlink(kept))
      } else if (place.kind === 'new') {
        undo.push(() => files.unlink(place.path))
      }
      await files.rename(temporary, place.path)
    }
  } catch (error) {
    // last first; what was never made cannot be taken away, and one failure must not keep the rest from being put back
    for (const step of undo.reverse()) await step().catch(() => undefined)
    throw writeFault(error, current)
  }
  for (const step of finish) await step().catch(() => undefined)
}

type Place = { readonly path: string; readonly kind: 'new' | 'old' | 'device' }

/** Where a path leads, through links: to nothing yet, to a file, or to something that is no file. */
async function placeOf(path: string, files: Files): Promise<Place> {
  let real: string
  try {
    real = await files.realpath(path)
  } catch (error) {
    if (systemCode(error) !== 'ENOENT') throw error
    return { path, kind: 'new' }
  }
  const found = await files.lstat(real)
  if (found.isDirectory()) throw new CallError(`${path} is a folder, and a file is to be written there`)
  return { path: real, kind: found.isFile() ? 'old' : 'device' }
}

/** A name in the same folder that nobody else uses, however long the file's own name is. */
function besides(path: string, ending: string): string {
  return join(dirname(path), `.paperjig-${randomBytes(8).toString('hex')}.${ending}`)
}

/** Why a file could not be written, as a sentence; what is no fault of the system's stays as it is. */
export function writeFault(error: unknown, path: string): unknown {
  const code = systemCode(error)
  switch (code) {
    case undefined:
      return error
    case 'ENOENT':
    case 'ENOTDIR':
      return new CallError(`there is no folder ${dirname(path)} to write into`)
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return new CallError(`${path} may not be written`)
    case 'ENOSPC':
    case 'EDQUOT':
      return new CallError(`there is no room left to write ${path}`)
    case 'ENAMETOOLONG':
      return new CallError('the name of the file to be written is longer than any file name can be')
    default:
      return new CallError(`${path} cannot be written (${code})`)
  }
}
