import type { Command } from 'commander'
import { exitCode } from '../exit-code.ts'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example } from './help.ts'

export function addSchema(program: Command, shell: Shell, done: Done): void {
  program
    .command('schema')
    .summary('print the JSON Schema of the plan file')
    .description(
      'Prints the JSON Schema of the plan file. An editor that is given it completes the keys of a plan and marks those that paperjig does not know.',
    )
    .addHelpText('after', example('paperjig schema > paperjig.schema.json'))
    .action(async () => {
      const { planSchemaText } = await import('../../app/index.ts')
      shell.stdout.write(planSchemaText())
      done(exitCode.done)
    })
}
