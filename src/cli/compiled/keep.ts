import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import process from 'node:process'
import { Writable } from 'node:stream'
import { fileURLToPath } from 'node:url'
import { setFlagsFromString } from 'node:v8'
import { exitCode } from '../exit-code.ts'
import { optimiseLater } from '../optimise-later.ts'
import type { Shell } from '../shell.ts'
import { loadCommand } from './load.ts'

/*
 * The last step of the build: does what users do, and keeps beside the command what the engine compiled for it, which
 * takes an eighth of the time of a small print otherwise.
 */

const plan = fileURLToPath(new URL('../../examples/cliff-railway/cliff-railway.yaml', import.meta.url))
optimiseLater()
// the engine forgets functions that it has not run for a while
setFlagsFromString('--no-flush-bytecode')
const { run, scripts } = loadCommand()
const folder = mkdtempSync(join(tmpdir(), 'paperjig-'))
try {
  const calls = [
    ['--help'],
    ['check', plan],
    ['svg', plan, '-o', folder],
    ['print', plan, '-o', join(folder, 'demo.pdf')],
  ]
  for (const words of calls) {
    if ((await run(words, quiet())) === exitCode.unusable)
      throw new Error(`paperjig ${words.join(' ')} failed`)
  }
} finally {
  rmSync(folder, { recursive: true })
}
// what is kept is taken only under the flags under which it was kept
setFlagsFromString('--flush-bytecode')
scripts.keep()

function quiet(): Shell {
  const nowhere = new Writable({ write: (_piece, _encoding, done) => done() })
  return { stdin: process.stdin, stdout: nowhere, stderr: nowhere, env: {} } as unknown as Shell
}
