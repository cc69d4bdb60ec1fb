import { type ExitCode, exitCode } from '../exit-code.ts'
import { nameFromPlan } from '../output/name-from-plan.ts'
import { hasErrors } from '../output/report.ts'
import type { Shell } from '../shell.ts'
import { type PrintOptions, toChoices } from './options.ts'
import { printPlan } from './print-plan.ts'

/** Prints a plan as one PDF file. */
export async function print(plan: string, options: PrintOptions, shell: Shell): Promise<ExitCode> {
  const to = { ...options, usual: `${nameFromPlan(plan)}.pdf` }
  const { code, printed } = await printPlan(plan, to, shop => toChoices(options, shop), shell)
  if (code !== exitCode.done || printed === undefined) return code
  return options.strict === true && hasErrors(printed) ? exitCode.foundErrors : exitCode.done
}
