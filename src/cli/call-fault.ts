import type { CommanderError } from 'commander'

/** What the parser says of a call, as one sentence: the command, what is wrong, and what was probably meant. */
export function callFault({ code, message }: CommanderError): string {
  // the parser shows the whole help where no command is given
  if (code === 'commander.help')
    return 'say what to do: new, cards, check, print, strip, svg, scale, printer, shop or schema; paperjig --help shows how'
  if (code === 'commander.missingArgument' && message.includes("'PLAN'")) {
    return 'the plan file is missing; it stands before --part, which takes every name behind it'
  }
  if (code === 'commander.missingArgument' && message.includes("'PART.ROW'")) {
    return 'the row is missing; say which strip, as in paperjig strip PLAN side-frame.posts'
  }
  return message
    .replace(/^error: /, '')
    .replace(/\n\(Did you mean (.*)\?\)$/, '; did you mean $1?')
    .replaceAll('\n', ' ')
}
