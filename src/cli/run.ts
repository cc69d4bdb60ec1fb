import { CommanderError } from 'commander'
import { visible } from '../finding/visible.ts'
import { CallError } from './call-error.ts'
import { callFault } from './call-fault.ts'
import { type ExitCode, exitCode } from './exit-code.ts'
import { buildProgram } from './program.ts'
import type { Shell } from './shell.ts'

/** Does what the words of a call ask for. Never throws: whatever goes wrong is one sentence on the error stream. */
export async function run(words: readonly string[], shell: Shell): Promise<ExitCode> {
  let code: ExitCode = exitCode.unusable
  const say = (sentence: string): void => {
    shell.stderr.write(`paperjig: ${visible(sentence)}\n`)
  }
  try {
    const program = buildProgram(shell, result => {
      code = result
    })
    await program.parseAsync(words, { from: 'user' })
    return code
  } catch (error) {
    if (error instanceof CommanderError) {
      if (error.exitCode === 0) return exitCode.done
      say(callFault(error))
    } else if (error instanceof CallError) {
      say(error.message)
    } else {
      say(`this is a fault of paperjig and not of your plan: ${messageOf(error)}`)
      if (shell.env.PAPERJIG_DEBUG === '1' && error instanceof Error) shell.stderr.write(`${error.stack}\n`)
      else shell.stderr.write('Set PAPERJIG_DEBUG=1 to see where it happened, and send that with the plan.\n')
    }
    return exitCode.unusable
  }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}
