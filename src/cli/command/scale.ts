import { type Command, Option } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example, marginHelp } from './help.ts'

export function addScale(program: Command, shell: Shell, done: Done): void {
  program
    .command('scale')
    .summary('print a sheet to measure a printer by')
    .description(
      'Prints a scale sheet: bars, a square with its diagonals, and how to read them with a steel rule. What you read goes to paperjig printer, which corrects later prints.',
    )
    .option('-o, --output <FILE>', 'the PDF to write, - for standard output (default: scale.pdf)')
    .option('--paper <PAPER>', 'as for print (default: letter, or a4 for --units mm)')
    .option('--margin <LENGTH>', marginHelp)
    .addOption(new Option('--units <UNITS>', 'what is shown first').choices(['inch', 'mm']).default('inch'))
    .addHelpText('after', example('paperjig scale --paper a4 -o scale.pdf'))
    .action(async options => {
      const { scale } = await import('../job/scale.ts')
      done(await scale(options, shell))
    })
}
