import type { ExitCode } from '../exit-code.ts'
import type { Shell } from '../shell.ts'
import { type StripOptions, toChoices } from './options.ts'
import { printPlan } from './print-plan.ts'

/** Prints the drill strip of one row or hole, `side-frame.posts`, as a PDF. */
export async function strip(
  plan: string,
  row: string,
  options: StripOptions,
  shell: Shell,
): Promise<ExitCode> {
  const to = { ...options, usual: `${row.replaceAll('/', '-')}.pdf` }
  const { code } = await printPlan(plan, to, shop => ({ ...toChoices(options, shop), strip: row }), shell)
  return code
}
