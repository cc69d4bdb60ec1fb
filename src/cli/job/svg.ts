import { join } from 'node:path'
import { printSvg } from '../../app/index.ts'
import { visible } from '../../finding/visible.ts'
import { CallError } from '../call-error.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { readFonts } from '../input/read-fonts.ts'
import { readPlanFile, readShopFile, standardStream } from '../input/read-plan-file.ts'
import { count } from '../output/count.ts'
import { pageCounter } from '../output/counter.ts'
import { nameFromPlan } from '../output/name-from-plan.ts'
import { namedOutput } from '../output/named-output.ts'
import { report } from '../output/report.ts'
import { withFolder } from '../output/with-folder.ts'
import { writeFiles } from '../output/write-files.ts'
import type { Shell } from '../shell.ts'
import { type SvgOptions, toChoices, toSvgChoices } from './options.ts'

/** Prints a plan as SVG files in one folder. */
export async function svg(plan: string, options: SvgOptions, shell: Shell): Promise<ExitCode> {
  const folder = folderFor(plan, namedOutput(options.output, 'folder'))
  const text = await readPlanFile(plan, shell.stdin)
  const shop = await readShopFile(options.shop, plan, shell.stdin)
  const fonts = readFonts()
  const counter = pageCounter(shell.stderr)
  const around = { fonts, progress: counter.tell }
  const printed = printSvg(text, toChoices(options, shop), around, toSvgChoices(options))
  counter.clear()
  const { files, pages } = printed
  report(printed, shell.stderr)
  if (files.length === 0) return exitCode.unusable
  await withFolder(folder, () =>
    writeFiles(files.map(({ name, bytes }) => ({ path: join(folder, name), bytes }))),
  )
  const drawings = files.length - pages
  shell.stdout.write(
    `wrote ${visible(folder)}: ${count(pages, 'page')}, ${count(drawings, 'part drawing')}\n`,
  )
  return exitCode.done
}

function folderFor(plan: string, output: string | undefined): string {
  if (output === standardStream) {
    throw new CallError(
      'svg writes several files, which standard output cannot hold; name a folder with -o DIR',
    )
  }
  if (output !== undefined) return output
  if (plan === standardStream) {
    throw new CallError('a plan from standard input has no name to call the folder by; name one with -o DIR')
  }
  return nameFromPlan(plan)
}
