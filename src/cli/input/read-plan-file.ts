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
export async function readPlanFile(plan: string, stdin: Readable): Promise<PlanText> {
  if (plan === standardStream) return { text: await firstBytes(stdin), file: 'standard input' }
  try {
    const file = await open(plan, 'r')
    try {
      if ((await file.stat()).isDirectory())
        throw new CallError(`${plan} is a folder; give the plan file in it`)
      return { text: await firstBytes(file.createReadStream({ autoClose: false })), file: plan }
    } finally {
      await file.close()
    }
  } catch (error) {
    throw await sentenceFor(error, plan)
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

async function sentenceFor(error: unknown, plan: string): Promise<unknown> {
  switch (systemCode(error)) {
    case 'ENOENT':
    case 'ENOTDIR': {
      const nearest = await neighbour(plan)
      return new CallError(
        `there is no file ${plan}${nearest === undefined ? '' : `; did you mean ${nearest}?`}`,
      )
    }
    case 'EACCES':
    case 'EPERM':
      return new CallError(`${plan} may not be read`)
    case 'EISDIR':
      return new CallError(`${plan} is a folder; give the plan file in it`)
    case 'ENAMETOOLONG':
      return new CallError('the name of the plan file is longer than any file name can be')
    case 'ERR_INVALID_ARG_VALUE':
      return new CallError(`${plan} is no name that a file can have`)
    case undefined:
      return error
    default:
      return new CallError(`${plan} cannot be read (${systemCode(error)})`)
  }
}

/** The file beside it whose name looks most like the one that was given. */
async function neighbour(plan: string): Promise<string | undefined> {
  const folder = dirname(plan)
  const names = await readdir(folder).catch((): string[] => [])
  const nearest = nearestName(basename(plan), names)
  return nearest === undefined ? undefined : plan.slice(0, plan.length - basename(plan).length) + nearest
}
