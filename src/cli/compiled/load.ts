import { fileURLToPath } from 'node:url'
import type { run } from '../run.ts'
import { type Scripts, scriptsOf } from './scripts.ts'

/** The command as the build has laid it beside the file that is called. */
export function loadCommand(): { readonly run: typeof run; readonly scripts: Scripts } {
  const scripts = scriptsOf(fileURLToPath(new URL('../command', import.meta.url)))
  const command = scripts.load('command.cjs') as { readonly run: typeof run }
  return { run: command.run, scripts }
}
