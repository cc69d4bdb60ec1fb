import type { Command } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example, planHelp } from './help.ts'
import { addPacketOptions } from './packet-options.ts'

export function addSvg(program: Command, shell: Shell, done: Done): void {
  const command = program
    .command('svg')
    .summary('draw pages and parts as SVG files')
    .description(
      'Draws a plan as SVG files: one a page, and one a part with nothing but its outline, holes and slots, for a laser or a drawing program.',
    )
    .argument('PLAN', planHelp)
    .option('-o, --output <DIR>', 'the folder to write into (default: named after the plan)')
  addPacketOptions(command)
    .option('--hairline', 'draw pages with hairlines too, as the parts are')
    .option(
      '--kerf <WIDTH>',
      'what the machine burns or cuts away: the lines of parts are moved into the waste by half of it',
    )
    .option('--engrave', 'put what is engraved into the files of parts too, in a group of its own')
    .option('--no-text', 'leave words and numbers out of the pages')
    .addHelpText(
      'after',
      example('paperjig svg examples/cliff-railway/cliff-railway.yaml -o car --part side-frame'),
    )
    .action(async (plan, options) => {
      const { svg } = await import('../job/svg.ts')
      done(await svg(plan, options, shell))
    })
}
