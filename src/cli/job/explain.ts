import { explainRule, readShop } from '../../app/index.ts'
import { CallError } from '../call-error.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { readShopFile } from '../input/read-plan-file.ts'
import { report } from '../output/report.ts'
import { wrapWords } from '../output/wrap-words.ts'
import type { Shell } from '../shell.ts'

/** Says what a rule is for, what its limit is in this shop, and where that comes from. */
export async function explain(rule: string, shop: string | undefined, shell: Shell): Promise<ExitCode> {
  const read = readShop(await readShopFile(shop, undefined, shell.stdin))
  if (read.workshop === undefined) {
    report(read, shell.stderr)
    return exitCode.unusable
  }
  const explained = explainRule(rule, read.workshop)
  if ('allowed' in explained) {
    const { nearest, allowed } = explained
    const hint = nearest === undefined ? `the rules are ${allowed.join(', ')}` : `did you mean ${nearest}?`
    throw new CallError(`there is no rule ${rule}; ${hint}`)
  }
  const { purpose, limit, origin } = explained
  const lines = [
    rule,
    ...wrapWords(purpose, '  '),
    ...wrapWords(`Limit: ${limit}.`, '  '),
    ...wrapWords(`Where it comes from: ${origin}.`, '  '),
  ]
  shell.stdout.write(`${lines.join('\n')}\n`)
  return exitCode.done
}
