import { type Command, Option } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example } from './help.ts'

export function addNew(program: Command, shell: Shell, done: Done): void {
  program
    .command('new')
    .summary('begin a plan')
    .description(
      'Begins a plan, with remarks to go on from. On a terminal it asks a few questions; elsewhere it takes the usual answers. It writes nothing over a file that is there.',
    )
    .argument(
      '[FILE]',
      'the plan file to write, - for standard output (default: named after the title; in a pipe: -)',
    )
    .addOption(new Option('--units <UNITS>', 'do not ask what the lengths are in').choices(['inch', 'mm']))
    .addHelpText('after', example('paperjig new gate.yaml --units mm'))
    .action(async (file: string | undefined, options) => {
      const { begin } = await import('../job/new.ts')
      done(await begin(file, options, shell))
    })
}
