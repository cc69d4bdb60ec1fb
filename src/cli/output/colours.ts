import picocolors from 'picocolors'
import type { TerminalOptions } from '../../app/index.ts'

type Paint = NonNullable<TerminalOptions['paint']>

/** How a report is coloured on a stream; not at all unless it is a terminal that shows colours (NO_COLOR, TERM). */
export function paintOn(stream: NodeJS.WriteStream): Paint {
  const colours = picocolors.createColors(stream.isTTY === true && stream.hasColors())
  const paint: Readonly<Record<Parameters<Paint>[0], (text: string) => string>> = {
    error: colours.red,
    warning: colours.yellow,
    note: colours.cyan,
    heading: colours.bold,
    place: colours.bold,
    quotation: colours.dim,
    caret: colours.red,
  }
  return (role, text) => paint[role](text)
}
