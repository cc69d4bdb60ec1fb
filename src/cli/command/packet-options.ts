import { type Command, Option } from 'commander'
import { marginHelp, paperHelp, partHelp, shopHelp } from './help.ts'

/** What print and svg have in common: which parts, for which shop, on what paper. */
export function addPacketOptions(command: Command): Command {
  return command
    .option('--paper <PAPER>', paperHelp)
    .option('--part <NAME...>', partHelp)
    .option('--sheet <KIND...>', 'only these kinds of sheet: cover, template, strip, wrap')
    .option('--shop <FILE>', shopHelp)
    .option('--margin <LENGTH>', marginHelp)
    .option('--overlap <LENGTH>', 'what two pages of one large drawing share (default: 10 mm)')
    .addOption(
      new Option(
        '--copies <FOR>',
        'a drawing for each piece, or one for all pieces of a hand of a part',
      ).choices(['piece', 'part']),
    )
}
