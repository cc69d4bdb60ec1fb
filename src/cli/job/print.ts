import { printPdf } from '../../app/index.ts'
import { visible } from '../../finding/visible.ts'
import { CallError } from '../call-error.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { fileDate } from '../input/file-date.ts'
import { readFonts } from '../input/read-fonts.ts'
import { readPlanFile, standardStream } from '../input/read-plan-file.ts'
import { count } from '../output/count.ts'
import { nameFromPlan } from '../output/name-from-plan.ts'
import { namedOutput } from '../output/named-output.ts'
import { hasErrors, report } from '../output/report.ts'
import { spareThePlan } from '../output/spare-the-plan.ts'
import { writeFiles } from '../output/write-files.ts'
import type { Shell } from '../shell.ts'
import { version } from '../version.ts'
import { type PrintOptions, toChoices } from './options.ts'

/** Prints a plan as one PDF file. */
export async function print(plan: string, options: PrintOptions, shell: Shell): Promise<ExitCode> {
  const fromStream = plan === standardStream
  const output =
    namedOutput(options.output, 'file') ?? (fromStream ? standardStream : `${nameFromPlan(plan)}.pdf`)
  if (output === standardStream && shell.stdout.isTTY) {
    throw new CallError(
      'a PDF cannot be read on a terminal; name a file with -o FILE.pdf, or send it on with >',
    )
  }
  const date = fileDate(shell.env)
  const text = await readPlanFile(plan, shell.stdin)
  const fonts = readFonts()
  const around = { fonts, version, ...(date === undefined ? {} : { date }) }
  const printed = await printPdf(text, toChoices(options), around)
  const { pdf, pages } = printed
  report(printed, shell.stderr)
  if (pdf === undefined) return exitCode.unusable
  if (output === standardStream) {
    shell.stdout.write(pdf)
  } else {
    if (!fromStream) await spareThePlan(plan, output)
    await writeFiles([{ path: output, bytes: pdf }])
    shell.stdout.write(`wrote ${visible(output)}: ${count(pages, 'page')}\n`)
  }
  return options.strict === true && hasErrors(printed) ? exitCode.foundErrors : exitCode.done
}
