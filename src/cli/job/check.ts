import { jsonReport, jsonText, readModel } from '../../app/index.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { readPlanFile } from '../input/read-plan-file.ts'
import { hasErrors, report } from '../output/report.ts'
import type { Shell } from '../shell.ts'
import type { CheckOptions } from './options.ts'

/** Says what a plan leaves out or gets wrong. */
export async function check(plan: string, options: CheckOptions, shell: Shell): Promise<ExitCode> {
  const read = readModel(await readPlanFile(plan, shell.stdin))
  if (options.json === true) {
    shell.stdout.write(jsonText(jsonReport(read.title, read.findings, read.texts, read.style)))
  } else {
    report(read, shell.stdout)
  }
  if (read.model === undefined) return exitCode.unusable
  return hasErrors(read) ? exitCode.foundErrors : exitCode.done
}
