import { createInterface } from 'node:readline/promises'
import { CallError } from '../call-error.ts'
import type { Shell } from '../shell.ts'

/** Asks until there is an answer that nothing speaks against; an empty one is the usual one. */
export type Ask = (
  question: string,
  usual: string,
  complaint: (answer: string) => string | undefined,
) => Promise<string>

/**
 * Lets `work` ask questions on the terminal.
 *
 * @throws CallError where the input ends before the questions do
 */
export async function withQuestions<T>(
  { stdin, stdout }: Pick<Shell, 'stdin' | 'stdout'>,
  work: (ask: Ask) => Promise<T>,
): Promise<T> {
  const lines = createInterface({ input: stdin, output: stdout, terminal: true })
  const ended = new Promise<never>((_, reject) => {
    lines.once('close', () => {
      stdout.write('\n')
      reject(new CallError('the questions were left before the last; nothing is written'))
    })
  })
  // where the work is done first, nobody waits for the end any more
  ended.catch(() => undefined)
  const ask: Ask = async (question, usual, complaint) => {
    for (;;) {
      const typed = await Promise.race([lines.question(`${question} [${usual}]: `), ended])
      const answer = typed.trim() === '' ? usual : typed.trim()
      const wrong = complaint(answer)
      if (wrong === undefined) return answer
      stdout.write(`  ${wrong}\n`)
    }
  }
  try {
    return await work(ask)
  } finally {
    lines.removeAllListeners('close')
    lines.close()
  }
}
