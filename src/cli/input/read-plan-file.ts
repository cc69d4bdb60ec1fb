import { open, readdir } from 'node:fs/promises'
import { basename, dirname } from 'node:path'
import type { Readable } from 'node:stream'
import { maxPlanBytes, type PlanText } from '../../app/index.ts'
import { nearestName } from '../../length/nearest-name.ts'
import { CallError, systemCode } from '../call-error.ts'

/** The name of standard input on the command line, and of standard output. */
export const standardStream = '-'

/**
 * The bytes of a plan. Of a file or stream that is larger than any plan may be, no more is read than shows that it is.
 *
 * @throws CallError where there is nothing to read
 */
export function readPlanFile(plan: string, stdin: Readable): Promise<PlanText> {
  return readText(plan, 'plan', stdin)
}

/**
 * The bytes of the workshop file, if there is one.
 *
 * @throws CallError where there is nothing to read, or where plan and workshop are both to come by standard input
 */
export async function readShopFile(
  shop: string | undefined,
  plan: string | undefined,
  stdin: Readable,
): Promise<PlanText | undefined> {
  if (shop === undefined) return undefined
  if (shop === standardStream && plan === standardStream) {
    throw new CallError('plan and workshop cannot both come from standard input; give one of them as a file')
  }
  return readText(shop, 'workshop', stdin)
}

type What = 'plan' | 'workshop'

async function readText(path: string, what: What, stdin: Readable): Promise<PlanText> {
  if (path === standardStream) return { text: await firstBytes(stdin), file: 'standard input' }
  try {
    const file = await open(path, 'r')
    try {
      if ((await file.stat()).isDirectory())
        throw new CallError(`${path} is a folder; give the ${what} file in it`)
      return { text: await firstBytes(file.createReadStream({ autoClose: false })), file: path }
    } finally {
      await file.close()
    }
  } catch (error) {
    throw await sentenceFor(error, path, what)
  }
}

async function firstBytes(stream: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  let length = 0
  for await (const chunk of stream) {
    chunks.push(chunk)
    length += chunk.length
    if (length > maxPlanBytes) break
  }
  return Buffer.concat(chunks).subarray(0, maxPlanBytes + 1)
}

async function sentenceFor(error: unknown, path: string, what: What): Promise<unknown> {
  switch (systemCode(error)) {
    case 'ENOENT':
    case 'ENOTDIR': {
      const nearest = await neighbour(path)
      return new CallError(
        `there is no file ${path}${nearest === undefined ? '' : `; did you mean ${nearest}?`}`,
      )
    }
    case 'EACCES':
    case 'EPERM':
      return new CallError(`${path} may not be read`)
    case 'EISDIR':
      return new CallError(`${path} is a folder; give the ${what} file in it`)
    case 'ENAMETOOLONG':
      return new CallError(`the name of the ${what} file is longer than any file name can be`)
    case 'ERR_INVALID_ARG_VALUE':
      return new CallError(`${path} is no name that a file can have`)
    case undefined:
      return error
    default:
      return new CallError(`${path} cannot be read (${systemCode(error)})`)
  }
}

/** The file beside it whose name looks most like the one that was given. */
async function neighbour(path: string): Promise<string | undefined> {
  const folder = dirname(path)
  const names = await readdir(folder).catch((): string[] => [])
  const nearest = nearestName(basename(path), names)
  return nearest === undefined ? undefined : path.slice(0, path.length - basename(path).length) + nearest
}
