import { printScale } from '../../app/index.ts'
import type { ExitCode } from '../exit-code.ts'
import { fileDate } from '../input/file-date.ts'
import { readFonts } from '../input/read-fonts.ts'
import { foundInCall, report } from '../output/report.ts'
import { pdfOutput, writePdf } from '../output/write-pdf.ts'
import type { Shell } from '../shell.ts'
import { version } from '../version.ts'

export type ScaleOptions = {
  readonly output?: string
  readonly paper?: string
  readonly margin?: string
  readonly units: 'inch' | 'mm'
}

/** Prints the sheet by which a printer is measured. */
export async function scale({ output, paper, margin, units }: ScaleOptions, shell: Shell): Promise<ExitCode> {
  const to = pdfOutput(output, undefined, 'scale.pdf', shell)
  const date = fileDate(shell.env)
  const { pdf, findings } = await printScale(
    { ...(paper === undefined ? {} : { paper }), ...(margin === undefined ? {} : { margin }) },
    units,
    { fonts: readFonts(), version, ...(date === undefined ? {} : { date }) },
  )
  if (findings.length > 0) report(foundInCall(...findings), shell.stderr)
  return writePdf({ pages: 1, ...(pdf === undefined ? {} : { pdf }) }, to, undefined, shell)
}
