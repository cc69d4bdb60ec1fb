import { measuredPrinter, type Printer } from '../../app/index.ts'
import { visible } from '../../finding/visible.ts'
import { CallError } from '../call-error.ts'
import { type ExitCode, exitCode } from '../exit-code.ts'
import { keepPrinter, readKnownPrinters } from '../input/printers.ts'
import { foundInCall, report } from '../output/report.ts'
import type { Shell } from '../shell.ts'

export type PrinterOptions = {
  readonly across?: string
  readonly along?: string
  readonly bars?: string
  readonly diagonals?: readonly string[]
}

/** Keeps what a printer measures; without a name, lists the printers that are known. */
export async function printer(
  name: string | undefined,
  { across, along, bars, diagonals }: PrinterOptions,
  { stdout, stderr, env }: Shell,
): Promise<ExitCode> {
  if (name === undefined) {
    const known = await readKnownPrinters(env)
    const lines = known.map(inWords)
    stdout.write(
      `${lines.length > 0 ? lines.join('\n') : 'no printer is known; print a scale sheet first: paperjig scale'}\n`,
    )
    return exitCode.done
  }
  if (across === undefined || along === undefined) {
    throw new CallError(
      'both readings are wanted: --across and --along, each what that bar of the sheet measures',
    )
  }
  const [a, b, ...more] = diagonals ?? []
  if (diagonals !== undefined && (a === undefined || b === undefined || more.length > 0)) {
    throw new CallError('--diagonals wants the two readings A and B')
  }
  const measured = measuredPrinter({
    name,
    across,
    along,
    ...(bars === undefined ? {} : { bars }),
    ...(a === undefined || b === undefined ? {} : { diagonals: [a, b] }),
  })
  if ('findings' in measured) {
    report(foundInCall(...measured.findings), stderr)
    return exitCode.unusable
  }
  const path = await keepPrinter(measured.printer, env)
  stdout.write(
    `${inWords(measured.printer)}\nkept in ${visible(path)}; correct prints for it with --printer\n`,
  )
  return exitCode.done
}

/** "laser: 0.50 % short across, 0.17 % long along, leans 0.01 mm on 100" */
function inWords({ name, across, along, lean }: Printer): string {
  const askew = lean === 0 ? '' : `, ${Math.abs(lean * 100).toFixed(2)} mm on 100 askew`
  return `${visible(name)}: ${off(across)} across, ${off(along)} along${askew}`
}

function off(share: number): string {
  const percent = (Math.abs(share - 1) * 100).toFixed(2)
  return percent === '0.00' ? 'true' : `${percent} % ${share < 1 ? 'short' : 'long'}`
}
