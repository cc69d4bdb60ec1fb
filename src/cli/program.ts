import { Command } from 'commander'
import { addCards } from './command/cards.ts'
import { addCheck } from './command/check.ts'
import type { Done } from './command/done.ts'
import { example } from './command/help.ts'
import { addNew } from './command/new.ts'
import { addPrint } from './command/print.ts'
import { addPrinter } from './command/printer.ts'
import { addScale } from './command/scale.ts'
import { addSchema } from './command/schema.ts'
import { addShop } from './command/shop.ts'
import { addStrip } from './command/strip.ts'
import { addSvg } from './command/svg.ts'
import type { Shell } from './shell.ts'
import { version } from './version.ts'

/** The commands with their options and help. What is wrong with a call is thrown as a CommanderError and not printed. */
export function buildProgram(shell: Shell, done: Done): Command {
  const program = new Command('paperjig')
    .description('True-size paper templates and checks for wooden models and shop jigs, from one plan file.')
    .version(version, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [COMMAND]', 'print the help of a command')
    .addHelpText('after', example('paperjig print examples/cliff-railway/cliff-railway.yaml'))
    .addHelpText(
      'after',
      '\nExit codes: 0 done; 1 done, and errors were found (print: only with --strict); 2 the call or the plan could not be used.',
    )
    .exitOverride()
    .configureOutput({
      writeOut: text => shell.stdout.write(text),
      // the sentence is written in one place, whatever went wrong
      writeErr: () => undefined,
    })
  addPrint(program, shell, done)
  addStrip(program, shell, done)
  addSvg(program, shell, done)
  addCheck(program, shell, done)
  addNew(program, shell, done)
  addCards(program, shell, done)
  addScale(program, shell, done)
  addPrinter(program, shell, done)
  addShop(program, shell, done)
  addSchema(program, shell, done)
  return program
}
