import type { Command } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example, paperHelp, partHelp, planHelp, shopHelp } from './help.ts'

export function addSvg(program: Command, shell: Shell, done: Done): void {
  program
    .command('svg')
    .summary('draw pages and parts as SVG files')
    .description(
      'Draws a plan as SVG files: one a page, and one a part with nothing but its outline, holes and slots, for a laser or a drawing program.',
    )
    .argument('PLAN', planHelp)
    .option('-o, --output <DIR>', 'the folder to write into (default: named after the plan)')
    .option('--paper <PAPER>', paperHelp)
    .option('--part <NAME...>', partHelp)
    .option('--shop <FILE>', shopHelp)
    .addHelpText(
      'after',
      example('paperjig svg examples/cliff-railway/cliff-railway.yaml -o car --part side-frame'),
    )
    .action(async (plan, options) => {
      const { svg } = await import('../job/svg.ts')
      done(await svg(plan, options, shell))
    })
}
