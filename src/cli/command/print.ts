import type { Command } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example, planHelp } from './help.ts'
import { addPacketOptions } from './packet-options.ts'

export function addPrint(program: Command, shell: Shell, done: Done): void {
  const command = program
    .command('print')
    .summary('print true-size templates and mark-outs as a PDF')
    .description(
      'Prints a plan as a PDF: a true-size template of every part that is curved, angled or full of detail, a mark-out with its dimensions of every other, and scale bars on every page.',
    )
    .argument('PLAN', planHelp)
    .option('-o, --output <FILE>', 'the PDF to write, - for standard output (default: named after the plan)')
  addPacketOptions(command)
    .option('--printer <NAME>', 'correct for this printer, which paperjig printer has measured')
    .option('--strict', 'exit with 1 where the check finds errors')
    .addHelpText(
      'after',
      example('paperjig print examples/cliff-railway/cliff-railway.yaml -o car.pdf --paper a4'),
    )
    .action(async (plan, options) => {
      const { print } = await import('../job/print.ts')
      done(await print(plan, options, shell))
    })
}
