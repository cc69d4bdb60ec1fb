import { showShop } from '../../app/index.ts'
import { visible } from '../../finding/visible.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { readShopFile } from '../input/read-plan-file.ts'
import { namedOutput } from '../output/named-output.ts'
import { report } from '../output/report.ts'
import { writeNewFile } from '../output/write-new-file.ts'
import type { Shell } from '../shell.ts'

export type ShopOptions = {
  readonly write?: string
  readonly shop?: string
  readonly units: 'inch' | 'mm'
}

/** Shows a workshop, or writes it to a file that was not there before. */
export async function shop(
  { write, shop: file, units }: ShopOptions,
  { stdin, stdout, stderr }: Shell,
): Promise<ExitCode> {
  const output = namedOutput(write, 'file', '--write')
  const shown = showShop(await readShopFile(file, undefined, stdin), units)
  if (shown.findings.length > 0) report(shown, stderr)
  if (shown.text === undefined) return exitCode.unusable
  if (output === undefined) {
    stdout.write(shown.text)
  } else {
    await writeNewFile(output, shown.text)
    stdout.write(`wrote ${visible(output)}; change what is different in your shop, and use it with --shop\n`)
  }
  return exitCode.done
}
