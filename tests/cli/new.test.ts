import { readFile } from 'node:fs/promises'
import { PassThrough } from 'node:stream'
import { expect } from 'vitest'
import { run } from '../../src/cli/run.ts'
import type { Shell } from '../../src/cli/shell.ts'
import { testInFolder } from './call.ts'

testInFolder('new in a pipe prints the usual plan, in which the check finds nothing', async folder => {
  const { code, out, err } = await folder.call(['new'])
  expect({ code, err }).toEqual({ code: 0, err: '' })
  const check = await folder.call(['check', '-'], { stdin: out })
  expect(check).toMatchObject({ code: 0, out: 'nothing found\n' })
})

testInFolder('new FILE writes a plan with the title that the name of the file makes', async folder => {
  const { code, out } = await folder.call(['new', 'sluice-gate.yaml', '--units', 'mm'])
  expect([code, out]).toEqual([0, expect.stringMatching(/^wrote sluice-gate\.yaml; /)])
  const text = await readFile(folder.in('sluice-gate.yaml'), 'utf8')
  expect(text).toContain('\ntitle: Sluice gate\nunits: mm ')
  expect((await folder.call(['check', 'sluice-gate.yaml'])).out).toBe('nothing found\n')
})

testInFolder('new writes nothing over what is there, nor where nothing can be written', async folder => {
  await folder.write('mine.yaml', 'mine')
  const { code, err } = await folder.call(['new', 'mine.yaml'])
  expect([code, err]).toEqual([2, expect.stringContaining('mine.yaml is there already')])
  expect(await readFile(folder.in('mine.yaml'), 'utf8')).toBe('mine')
  const nowhere = await folder.call(['new', 'no/such.yaml'])
  expect([nowhere.code, nowhere.err]).toEqual([2, 'paperjig: there is no folder no to write into\n'])
})

/** A terminal on which these answers are typed, each when it is asked for. */
function terminal(answers: readonly string[], end = false) {
  const stdin = Object.assign(new PassThrough(), { isTTY: true })
  let shown = ''
  const left = [...answers]
  const stdout = Object.assign(new PassThrough(), { isTTY: true, columns: 200 })
  stdout.on('data', (chunk: Buffer) => {
    shown += chunk
    if (!/\]: [^\n]*$/.test(chunk.toString())) return
    const next = left.shift()
    if (next !== undefined) setImmediate(() => stdin.write(`${next}\r`))
    else if (end) stdin.end()
  })
  let said = ''
  const stderr = { write: (text: string) => (said += text) }
  const shell = { stdin, stdout, stderr, env: {} } as unknown as Shell
  return { shell, shown: () => shown, said: () => said }
}

testInFolder('on a terminal it asks, and what it is told stands in the plan', async folder => {
  const { shell, shown } = terminal(['Hand loom', 'mm', '', 'Left cheek', '300 x 60'])
  expect(await run(['new', folder.in('loom.yaml')], shell)).toBe(0)
  const text = await readFile(folder.in('loom.yaml'), 'utf8')
  for (const words of ['title: Hand loom', 'units: mm', 'board: 11', 'left-cheek:', 'size: 300 x 60']) {
    expect(text).toContain(words)
  }
  expect(shown()).toContain('What is it called [Loom]: ')
  expect((await folder.call(['check', 'loom.yaml'])).out).toBe('nothing found\n')
})

testInFolder(
  'an answer that cannot stand in a plan is said to be wrong and asked for again',
  async folder => {
    const { shell, shown } = terminal(['', 'feet', 'inch', '', '', 'wide', '6 x 2'])
    expect(await run(['new', folder.in('a.yaml')], shell)).toBe(0)
    expect(shown()).toContain('answer inch or mm')
    expect(shown()).toContain('wide')
    expect(await readFile(folder.in('a.yaml'), 'utf8')).toContain('size: 6 x 2 ')
  },
)

testInFolder('where the questions are left nothing is written', async folder => {
  const { shell, said } = terminal(['Loom'], true)
  expect(await run(['new', folder.in('a.yaml')], shell)).toBe(2)
  expect(said()).toContain('nothing is written')
  expect(await folder.names()).toEqual([])
})

testInFolder('a file that is there is refused before the first question', async folder => {
  await folder.write('a.yaml', 'mine')
  const { shell, shown } = terminal([])
  expect(await run(['new', folder.in('a.yaml')], shell)).toBe(2)
  expect(shown()).toBe('')
})
