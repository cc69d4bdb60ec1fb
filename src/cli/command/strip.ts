import type { Command } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example, marginHelp, paperHelp, planHelp, shopHelp } from './help.ts'

export function addStrip(program: Command, shell: Shell, done: Done): void {
  program
    .command('strip')
    .summary('print one drill strip as a PDF')
    .description(
      'Prints the drill strip of one row, or of one hole: the paper that is folded over the edge at the fence, with the centres, the fence distance and the distances from the reference end.',
    )
    .argument('PLAN', planHelp)
    .argument('PART.ROW', 'the row or hole, after its part and a full stop')
    .option('-o, --output <FILE>', 'the PDF to write, - for standard output (default: PART.ROW.pdf)')
    .option('--paper <PAPER>', paperHelp)
    .option('--shop <FILE>', shopHelp)
    .option('--margin <LENGTH>', marginHelp)
    .option('--overlap <LENGTH>', 'what two pages of a long strip share (default: 10 mm)')
    .option('--printer <NAME>', 'correct for this printer, which paperjig printer has measured')
    .addHelpText(
      'after',
      example('paperjig strip examples/cliff-railway/cliff-railway.yaml side-frame.posts -o posts.pdf'),
    )
    .action(async (plan, row, options) => {
      const { strip } = await import('../job/strip.ts')
      done(await strip(plan, row, options, shell))
    })
}
