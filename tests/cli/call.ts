import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { test } from 'vitest'
import { builtCommand } from './built-command.ts'

/** The demo, which the check finds four errors in. */
export const demoPlan = fileURLToPath(
  new URL('../../examples/cliff-railway/cliff-railway.yaml', import.meta.url),
)

/** A plan that nothing is wrong with. */
export const soundPlan = `paperjig: 1
title: Bobbin rack
units: mm
parts:
  rail:
    size: 120 x 30 x 8
    corners: 4
    cuts:
      - row: pegs
        at: { left: center, bottom: 15 }
        toward: right
        spacing: 20
        count: 5
        diameter: 6
`

export type Call = {
  readonly code: number | null
  readonly stdout: Buffer
  readonly out: string
  readonly err: string
}

export type Around = {
  readonly stdin?: string | Uint8Array
  readonly env?: Readonly<Record<string, string>>
}

/** A folder of its own for a test. */
export type Folder = {
  readonly path: string
  readonly in: (name: string) => string
  readonly write: (name: string, content: string | Uint8Array) => Promise<void>
  /** All that is in it, hidden files too. */
  readonly names: () => Promise<string[]>
  /** Runs the built command here, as a shell would. */
  readonly call: (words: readonly string[], around?: Around) => Promise<Call>
}

function folderAt(path: string): Folder {
  const within = (name: string): string => join(path, name)
  return {
    path,
    in: within,
    write: (name, content) => writeFile(within(name), content),
    names: async () => (await readdir(path)).sort(),
    call: (words, around) => callIn(path, words, around),
  }
}

async function callIn(
  cwd: string,
  words: readonly string[],
  { stdin, env = {} }: Around = {},
): Promise<Call> {
  const child = spawn(process.execPath, [builtCommand, ...words], {
    cwd,
    env: { ...process.env, ...env },
    stdio: 'pipe',
  })
  const [out, err] = [gather(child.stdout), gather(child.stderr)]
  // a command that has read enough stops listening
  child.stdin.on('error', () => undefined)
  child.stdin.end(stdin)
  const [code] = (await once(child, 'close')) as [number | null]
  const stdout = Buffer.concat(out)
  return { code, stdout, out: stdout.toString(), err: Buffer.concat(err).toString() }
}

function gather(stream: NodeJS.ReadableStream): readonly Buffer[] {
  const chunks: Buffer[] = []
  stream.on('data', chunk => chunks.push(chunk))
  return chunks
}

/** A test that gets a folder of its own. */
export function testInFolder(name: string, body: (folder: Folder) => Promise<void>): void {
  test.concurrent(name, async () => {
    const path = await mkdtemp(join(tmpdir(), 'paperjig-test-'))
    try {
      await body(folderAt(path))
    } finally {
      await rm(path, { recursive: true, force: true })
    }
  })
}
