import { lstat } from 'node:fs/promises'
import { type NewPlan, newPlan, titleFromFileName, usualPlan } from '../../app/index.ts'
import { visible } from '../../finding/visible.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { askForPlan } from '../input/ask-for-plan.ts'
import { standardStream } from '../input/read-plan-file.ts'
import { nameFromPlan } from '../output/name-from-plan.ts'
import { namedOutput } from '../output/named-output.ts'
import { thereAlready, writeNewFile } from '../output/write-new-file.ts'
import type { Shell } from '../shell.ts'

export type NewOptions = { readonly units?: 'inch' | 'mm' }

/** Begins a plan: by questions on a terminal, else with the usual answers. */
export async function begin(
  file: string | undefined,
  { units }: NewOptions,
  shell: Shell,
): Promise<ExitCode> {
  const { stdin, stdout } = shell
  const named = namedOutput(file, 'file', 'new')
  const onTerminal = stdin.isTTY === true && stdout.isTTY === true
  const output = named ?? (onTerminal ? undefined : standardStream)
  // nobody should answer five questions to be refused then
  if (output !== undefined && output !== standardStream && (await isThere(output))) throw thereAlready(output)
  const usual = usualFor(output, units ?? 'inch')
  const plan = onTerminal ? await askForPlan(usual, units, shell) : usual
  const { text } = newPlan(plan)
  const path = output ?? `${fileName(plan.title)}.yaml`
  if (path === standardStream) {
    stdout.write(text)
  } else {
    await writeNewFile(path, text)
    stdout.write(
      `wrote ${visible(path)}; go on in it with an editor, and see what it lacks with paperjig check\n`,
    )
  }
  return exitCode.done
}

function usualFor(output: string | undefined, units: 'inch' | 'mm'): NewPlan {
  const usual = usualPlan(units)
  if (output === undefined || output === standardStream) return usual
  const titled = { ...usual, title: titleFromFileName(nameFromPlan(output)) }
  // a file may be called what no plan can
  return newPlan(titled).findings.length === 0 ? titled : usual
}

function fileName(title: string): string {
  const words = title.toLowerCase().match(/[\p{Letter}\d]+/gu) ?? ['plan']
  return words.join('-').slice(0, longestName)
}

/** Well under what file systems allow, whatever the letters take in bytes. */
const longestName = 60

function isThere(path: string): Promise<boolean> {
  return lstat(path).then(
    () => true,
    () => false,
  )
}
