import type { WriteStream } from 'node:tty'
import picocolors from 'picocolors'
import type { TerminalOptions } from '../../app/index.ts'

type Paint = NonNullable<TerminalOptions['paint']>

/** How a report is coloured on a stream; not at all unless it is a terminal that shows colours (NO_COLOR, TERM). */
export function paintOn(stream: NodeJS.WriteStream | WriteStream): Paint {
  const shows = stream.isTTY && stream.hasColors()
  const colours = picocolors.createColors(shows)
  const paint: Readonly<Record<Parameters<Paint>[0], (text: string) => string>> = {
    error: colours.red,
    warning: colours.yellow,
    note: colours.cyan,
    heading: colours.bold,
    place: colours.bold,
    quotation: colours.reset,
    caret: colours.red,
  }
  return (role, text) => paint[role](text)
}
