import { jsonReport, jsonText, readJob } from '../../app/index.ts'
import { CallError } from '../call-error.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { readPlanFile, readShopFile } from '../input/read-plan-file.ts'
import { hasErrors, report } from '../output/report.ts'
import type { Shell } from '../shell.ts'
import { explain } from './explain.ts'
import type { CheckOptions } from './options.ts'

/** Says what a plan leaves out or gets wrong; or what one of the rules is about. */
export async function check(
  plan: string | undefined,
  { json, shop, explain: rule }: CheckOptions,
  shell: Shell,
): Promise<ExitCode> {
  if (rule !== undefined) {
    if (plan !== undefined || json === true) {
      throw new CallError('--explain tells of a rule and looks at no plan; call check without it for a plan')
    }
    return explain(rule, shop, shell)
  }
  if (plan === undefined) throw new CallError('the plan file is missing: paperjig check PLAN')
  const text = await readPlanFile(plan, shell.stdin)
  const read = readJob(text, await readShopFile(shop, plan, shell.stdin))
  if (json === true) {
    shell.stdout.write(jsonText(jsonReport(read.title, read.findings, read.texts, read.style)))
  } else {
    report(read, shell.stdout)
  }
  if (read.job === undefined) return exitCode.unusable
  return hasErrors(read) ? exitCode.foundErrors : exitCode.done
}
