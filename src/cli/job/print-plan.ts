import { type Choices, type PlanText, type PrintedPdf, printPdf } from '../../app/index.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { fileDate } from '../input/file-date.ts'
import { chosenPrinter } from '../input/printers.ts'
import { readFonts } from '../input/read-fonts.ts'
import { readPlanFile, readShopFile, standardStream } from '../input/read-plan-file.ts'
import { pageCounter } from '../output/counter.ts'
import { pack } from '../output/pack.ts'
import { foundInCall, report } from '../output/report.ts'
import { pdfOutput, writePdf } from '../output/write-pdf.ts'
import type { Shell } from '../shell.ts'
import { version } from '../version.ts'

/** Where a PDF of a plan goes, and for which shop and printer it is made. */
export type PlanOutput = {
  readonly output?: string
  /** What the file is called unless `output` says. */
  readonly usual: string
  readonly shop?: string
  readonly printer?: string
}

/** Reads a plan, prints what is chosen of it, reports what was found, and writes the PDF. */
export async function printPlan(
  plan: string,
  { output: wanted, usual, shop: shopFile, printer }: PlanOutput,
  choose: (shop: PlanText | undefined) => Choices,
  shell: Shell,
): Promise<{ readonly code: ExitCode; readonly printed?: PrintedPdf }> {
  const output = pdfOutput(wanted, plan, usual, shell)
  const date = fileDate(shell.env)
  const text = await readPlanFile(plan, shell.stdin)
  const shop = await readShopFile(shopFile, plan, shell.stdin)
  const known = await chosenPrinter(printer, shell.env)
  if ('finding' in known) {
    report(foundInCall(known.finding), shell.stderr)
    return { code: exitCode.unusable }
  }
  const fonts = readFonts()
  const counter = pageCounter(shell.stderr)
  const around = { fonts, version, pack, progress: counter.tell, ...(date === undefined ? {} : { date }) }
  const printed = await printPdf(text, { ...choose(shop), ...known }, around).finally(counter.clear)
  report(printed, shell.stderr)
  const code = await writePdf(printed, output, plan === standardStream ? undefined : plan, shell)
  return { code, printed }
}
