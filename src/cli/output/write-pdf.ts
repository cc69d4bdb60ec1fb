import type { PrintedPdf } from '../../app/index.ts'
import { visible } from '../../finding/visible.ts'
import { CallError } from '../call-error.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { standardStream } from '../input/read-plan-file.ts'
import type { Shell } from '../shell.ts'
import { count } from './count.ts'
import { namedOutput } from './named-output.ts'
import { spareThePlan } from './spare-the-plan.ts'
import { writeFiles } from './write-files.ts'

/**
 * Where a PDF goes: where the call says, else to a file of the usual name, and to standard output where the plan came
 * by standard input.
 *
 * @throws CallError where that is a terminal
 */
export function pdfOutput(
  wanted: string | undefined,
  plan: string | undefined,
  usual: string,
  { stdout }: Pick<Shell, 'stdout'>,
): string {
  const output = namedOutput(wanted, 'file') ?? (plan === standardStream ? standardStream : usual)
  if (output === standardStream && stdout.isTTY) {
    throw new CallError(
      'a PDF cannot be read on a terminal; name a file with -o FILE.pdf, or send it on with >',
    )
  }
  return output
}

/** Writes the PDF if there is one, and says so; never over the plan. */
export async function writePdf(
  { pdf, pages }: Pick<PrintedPdf, 'pdf' | 'pages'>,
  output: string,
  plan: string | undefined,
  shell: Shell,
): Promise<ExitCode> {
  if (pdf === undefined) return exitCode.unusable
  if (output === standardStream) {
    shell.stdout.write(pdf)
    return exitCode.done
  }
  if (plan !== undefined) await spareThePlan(plan, output)
  await writeFiles([{ path: output, bytes: pdf }])
  shell.stdout.write(`wrote ${visible(output)}: ${count(pages, 'page')}\n`)
  return exitCode.done
}
