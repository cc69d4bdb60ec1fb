import { spawnSync } from 'node:child_process'
import { readdirSync, statSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { builtLast } from './cli/built-command.ts'

const root = fileURLToPath(new URL('../', import.meta.url))

/** The tests of the command run what users run; this builds it where a source is younger than the build. */
export default function buildIfStale(): void {
  const built = statSync(builtLast, { throwIfNoEntry: false })?.mtimeMs ?? 0
  if (youngest() < built) return
  const build = spawnSync('npm', ['run', '--silent', 'build'], {
    cwd: root,
    encoding: 'utf8',
  })
  if (build.status !== 0) throw new Error(`the build failed:\n${build.stdout}${build.stderr}`)
}

function youngest(): number {
  const sources = readdirSync(`${root}src`, { recursive: true, encoding: 'utf8' }).map(name => `src/${name}`)
  return Math.max(
    ...['package.json', 'tsdown.config.ts', ...sources].map(name => statSync(root + name).mtimeMs),
  )
}
