import { type Command, InvalidArgumentError } from 'commander'
import type { Shell } from '../shell.ts'
import type { Done } from './done.ts'
import { example, marginHelp, partHelp } from './help.ts'

/** More than this is a slip of the finger. */
const mostCards = 100

export function addCards(program: Command, shell: Shell, done: Done): void {
  program
    .command('cards')
    .summary('print part cards to take to the paper drawing')
    .description(
      'Prints part cards as a PDF, to take to the paper drawing: six sides to sketch on, and rows for sizes and holes as given, as measured, or not given. With a plan there is a card for each part, with what is known filled in; without one they are blank.',
    )
    .argument('[PLAN]', 'the plan file (YAML), or - for standard input')
    .option(
      '-o, --output <FILE>',
      'the PDF to write, - for standard output (default: cards.pdf, or named after the plan)',
    )
    .option('--paper <PAPER>', 'as for print (default: letter, or a4 for plans in mm)')
    .option('--margin <LENGTH>', marginHelp)
    .option('--two', 'two smaller cards a page')
    .option('--count <N>', 'how many blank cards', wholeNumber)
    .option('--part <NAME...>', partHelp)
    .addHelpText('after', example('paperjig cards --count 4 --paper a4 -o cards.pdf'))
    .action(async (plan: string | undefined, options) => {
      const { cards } = await import('../job/cards.ts')
      done(await cards(plan, options, shell))
    })
}

function wholeNumber(text: string): number {
  const n = Number(text)
  if (/^\d+$/.test(text) && n >= 1 && n <= mostCards) return n
  throw new InvalidArgumentError(`It is a whole number from 1 to ${mostCards}.`)
}
