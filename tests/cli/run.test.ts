import { expect, test } from 'vitest'
import { run } from '../../src/cli/run.ts'
import type { Shell } from '../../src/cli/shell.ts'

function brokenShell(env: NodeJS.ProcessEnv): { readonly shell: Shell; readonly said: () => string } {
  let said = ''
  const shell = {
    stdout: {
      write: () => {
        throw new TypeError('gauge is\nnot a function')
      },
    },
    stderr: {
      write: (text: string) => {
        said += text
      },
    },
    env,
  } as unknown as Shell
  return { shell, said: () => said }
}

test('a fault of the program is owned to in one sentence, without a stack trace', async () => {
  const { shell, said } = brokenShell({})
  expect(await run(['--version'], shell)).toBe(2)
  expect(said()).toBe(
    'paperjig: this is a fault of paperjig and not of your plan: gauge is⟨U+000A⟩not a function\n' +
      'Set PAPERJIG_DEBUG=1 to see where it happened, and send that with the plan.\n',
  )
})

test('with PAPERJIG_DEBUG=1 it shows where it happened', async () => {
  const { shell, said } = brokenShell({ PAPERJIG_DEBUG: '1' })
  expect(await run(['--version'], shell)).toBe(2)
  expect(said()).toMatch(/\n {4}at .*run\.test\.ts/)
})
