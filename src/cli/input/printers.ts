import { mkdir, readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import {
  type Finding,
  knownPrinter,
  type Printer,
  readPrinters,
  withPrinter,
  writePrinters,
} from '../../app/index.ts'
import { CallError, systemCode } from '../call-error.ts'
import { writeFault, writeFiles } from '../output/write-files.ts'
import { configFolder } from './config-folder.ts'

function printersFile(env: NodeJS.ProcessEnv): string {
  return join(configFolder(env), 'printers.json')
}

/**
 * The printers that were measured, none where there is no file of them.
 *
 * @throws CallError where the file cannot be used
 */
export async function readKnownPrinters(env: NodeJS.ProcessEnv): Promise<readonly Printer[]> {
  const path = printersFile(env)
  let text: string
  try {
    text = await readFile(path, 'utf8')
  } catch (error) {
    const code = systemCode(error)
    if (code === 'ENOENT' || code === 'ENOTDIR') return []
    if (code === undefined) throw error
    throw new CallError(`${path}, which holds the measured printers, cannot be read (${code})`)
  }
  const printers = readPrinters(text)
  if (printers !== undefined) return printers
  throw new CallError(
    `${path} is not as it was written, so no printer is known; move it away and measure the printers again`,
  )
}

/** Keeps a printer, in place of one of the same name. Returns the file it is kept in. */
export async function keepPrinter(printer: Printer, env: NodeJS.ProcessEnv): Promise<string> {
  const path = printersFile(env)
  const printers = withPrinter(await readKnownPrinters(env), printer)
  try {
    await mkdir(dirname(path), { recursive: true })
  } catch (error) {
    throw writeFault(error, path)
  }
  await writeFiles([{ path, bytes: new TextEncoder().encode(writePrinters(printers)) }])
  return path
}

/** The printer that a call names, if it names one. */
export async function chosenPrinter(
  name: string | undefined,
  env: NodeJS.ProcessEnv,
): Promise<{ readonly printer?: Printer } | { readonly finding: Finding }> {
  return name === undefined ? {} : knownPrinter(name, await readKnownPrinters(env))
}
