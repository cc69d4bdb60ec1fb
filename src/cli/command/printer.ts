import type { Command } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example } from './help.ts'

export function addPrinter(program: Command, shell: Shell, done: Done): void {
  program
    .command('printer')
    .summary('keep what a printer measures, to correct prints for it')
    .description(
      'Keeps what you read off a scale sheet under the name of your printer; print --printer NAME is then corrected for it. Lengths may have any unit, a bare number is mm. Without a name it lists the printers that it knows.',
    )
    .argument('[NAME]', 'what you call the printer')
    .option('--across <LENGTH>', 'what the bar across the sheet measures')
    .option('--along <LENGTH>', 'what the bar along the sheet measures')
    .option('--bars <AxB>', 'which bars the sheet has, where they are not 180x240')
    .option(
      '--diagonals <LENGTH...>',
      'what the diagonals A and B of the square measure, for paper that goes through askew',
    )
    .addHelpText('after', example('paperjig printer laser --across 179.1 --along 239.6'))
    .action(async (name: string | undefined, options) => {
      const { printer } = await import('../job/printer.ts')
      done(await printer(name, options, shell))
    })
}
