import { printCards } from '../../app/index.ts'
import { CallError } from '../call-error.ts'
import type { ExitCode } from '../exit-code.ts'
import { fileDate } from '../input/file-date.ts'
import { readFonts } from '../input/read-fonts.ts'
import { readPlanFile, standardStream } from '../input/read-plan-file.ts'
import { nameFromPlan } from '../output/name-from-plan.ts'
import { report } from '../output/report.ts'
import { pdfOutput, writePdf } from '../output/write-pdf.ts'
import type { Shell } from '../shell.ts'
import { version } from '../version.ts'

export type CardsOptions = {
  readonly output?: string
  readonly paper?: string
  readonly margin?: string
  readonly two?: true
  readonly count?: number
  readonly part?: readonly string[]
}

/** Prints blank part cards, or those of a plan. */
export async function cards(
  plan: string | undefined,
  { output, paper, margin, two, count, part }: CardsOptions,
  shell: Shell,
): Promise<ExitCode> {
  if (plan === undefined && part !== undefined) {
    throw new CallError('--part wants the plan that the part is in; it stands before --part')
  }
  if (plan !== undefined && count !== undefined) {
    throw new CallError('--count is for blank cards; a plan has one for each of its parts')
  }
  const perPage = two === true ? 2 : 1
  const to = pdfOutput(
    output,
    plan,
    plan === undefined ? 'cards.pdf' : `${nameFromPlan(plan)}-cards.pdf`,
    shell,
  )
  const date = fileDate(shell.env)
  const text = plan === undefined ? undefined : await readPlanFile(plan, shell.stdin)
  const printed = await printCards(
    text,
    {
      perPage,
      count: count ?? perPage,
      ...(paper === undefined ? {} : { paper }),
      ...(margin === undefined ? {} : { margin }),
      ...(part === undefined ? {} : { parts: part }),
    },
    { fonts: readFonts(), version, ...(date === undefined ? {} : { date }) },
  )
  if (printed.findings.length > 0) report(printed, shell.stderr)
  return writePdf(printed, to, plan === standardStream ? undefined : plan, shell)
}
