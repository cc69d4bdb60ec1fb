import { printPdf } from '../../app/index.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { fileDate } from '../input/file-date.ts'
import { chosenPrinter } from '../input/printers.ts'
import { readFonts } from '../input/read-fonts.ts'
import { readPlanFile, readShopFile, standardStream } from '../input/read-plan-file.ts'
import { pageCounter } from '../output/counter.ts'
import { nameFromPlan } from '../output/name-from-plan.ts'
import { foundInCall, hasErrors, report } from '../output/report.ts'
import { pdfOutput, writePdf } from '../output/write-pdf.ts'
import type { Shell } from '../shell.ts'
import { version } from '../version.ts'
import { type PrintOptions, toChoices } from './options.ts'

/** Prints a plan as one PDF file. */
export async function print(plan: string, options: PrintOptions, shell: Shell): Promise<ExitCode> {
  const output = pdfOutput(options.output, plan, `${nameFromPlan(plan)}.pdf`, shell)
  const date = fileDate(shell.env)
  const text = await readPlanFile(plan, shell.stdin)
  const shop = await readShopFile(options.shop, plan, shell.stdin)
  const known = await chosenPrinter(options.printer, shell.env)
  if ('finding' in known) {
    report(foundInCall(known.finding), shell.stderr)
    return exitCode.unusable
  }
  const fonts = readFonts()
  const counter = pageCounter(shell.stderr)
  const around = { fonts, version, progress: counter.tell, ...(date === undefined ? {} : { date }) }
  const printed = await printPdf(text, { ...toChoices(options, shop), ...known }, around).finally(
    counter.clear,
  )
  report(printed, shell.stderr)
  const code = await writePdf(printed, output, plan === standardStream ? undefined : plan, shell)
  if (code !== exitCode.done) return code
  return options.strict === true && hasErrors(printed) ? exitCode.foundErrors : exitCode.done
}
