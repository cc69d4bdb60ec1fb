import type { Command } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example, planHelp, shopHelp } from './help.ts'

export function addCheck(program: Command, shell: Shell, done: Done): void {
  program
    .command('check')
    .summary('say what a plan leaves out or gets wrong')
    .description('Says what a plan leaves out or gets wrong. Exits with 1 where it finds errors.')
    .argument('[PLAN]', planHelp)
    .option('--json', 'for programs: the findings as JSON, lengths in mm, lines and columns from 1')
    .option('--shop <FILE>', shopHelp)
    .option('--explain <RULE>', 'what a rule is for, its limit and where that comes from; without a plan')
    .addHelpText('after', example('paperjig check examples/cliff-railway/cliff-railway.yaml'))
    .action(async (plan: string | undefined, options) => {
      const { check } = await import('../job/check.ts')
      done(await check(plan, options, shell))
    })
}
