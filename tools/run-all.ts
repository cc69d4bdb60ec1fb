/**
 * Runs every tool of one kind, `tools/KIND-*.ts`, one after the other, and fails if one of them does.
 *
 *     tsx tools/run-all.ts bench
 */
import { spawnSync } from 'node:child_process'
import { readdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const [kind = '', ...rest] = process.argv.slice(2)
const here = new URL('./', import.meta.url)
const tools = readdirSync(here)
  .filter(name => name.startsWith(`${kind}-`) && name.endsWith('.ts'))
  .sort()
if (kind === '' || tools.length === 0) throw new Error(`there is no tools/${kind}-*.ts`)

for (const tool of tools) {
  console.log(`\n── ${tool}`)
  const { status } = spawnSync(
    process.execPath,
    ['--import', 'tsx', fileURLToPath(new URL(tool, here)), ...rest],
    {
      stdio: 'inherit',
    },
  )
  if (status !== 0) process.exitCode = 1
}
