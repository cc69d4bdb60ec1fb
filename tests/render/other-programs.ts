import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/**
 * Hands a file to a program of another maker, which gets its path as the last argument before `after`.
 *
 * @returns undefined where the program is not installed; CI installs it
 */
export function handTo(
  program: string,
  before: readonly string[],
  bytes: Uint8Array,
  after: readonly string[] = [],
): { readonly status: number | null; readonly output: string } | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'paperjig-'))
  try {
    const file = join(folder, 'page')
    writeFileSync(file, bytes)
    const { error, status, stdout, stderr } = spawnSync(program, [...before, file, ...after], {
      encoding: 'utf8',
    })
    if (error !== undefined && 'code' in error && error.code === 'ENOENT') return undefined
    return { status, output: stdout + stderr }
  } finally {
    rmSync(folder, { recursive: true })
  }
}
