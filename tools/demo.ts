/** Prints the demo packet into `out/` with the built command, as a maker would. */
import { spawnSync } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../', import.meta.url))
const plan = 'examples/cliff-railway/cliff-railway.yaml'

mkdirSync(`${root}out`, { recursive: true })
for (const words of [
  ['print', plan, '-o', 'out/cliff-railway.pdf'],
  ['svg', plan, '-o', 'out/cliff-railway'],
]) {
  console.log(`\n$ paperjig ${words.join(' ')}`)
  const { status } = spawnSync(process.execPath, ['dist/cli/paperjig.js', ...words], {
    cwd: root,
    stdio: 'inherit',
  })
  if (status !== 0) process.exitCode = 1
}
