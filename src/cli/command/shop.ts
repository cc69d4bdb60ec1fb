import { type Command, Option } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example } from './help.ts'

export function addShop(program: Command, shell: Shell, done: Done): void {
  program
    .command('shop')
    .summary('show the workshop that plans are made for, or write a file of it')
    .description(
      'Shows every figure of the workshop that plans are made for: bits, kerf, allowances, fits, glue, printer. Write them to a file, change what is different in your shop, and give that to print, svg and check with --shop.',
    )
    .option('--write <FILE>', 'a workshop file to begin with; a file that is there already is not touched')
    .option(
      '--shop <FILE>',
      'show what this workshop file comes to, with the usual figures where it is silent',
    )
    .addOption(
      new Option('--units <UNITS>', 'what the lengths are in').choices(['inch', 'mm']).default('inch'),
    )
    .addHelpText('after', example('paperjig shop --write my-shop.yaml --units mm'))
    .action(async options => {
      const { shop } = await import('../job/shop.ts')
      done(await shop(options, shell))
    })
}
