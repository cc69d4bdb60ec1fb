import { symlink } from 'node:fs/promises'
import { expect } from 'vitest'
import about from '../../package.json' with { type: 'json' }
import { testInFolder } from './call.ts'

testInFolder('--version prints the version of package.json', async folder => {
  const { code, out, err } = await folder.call(['--version'])
  expect({ code, out, err }).toEqual({ code: 0, out: `${about.version}\n`, err: '' })
})

testInFolder('--help names every command and says what the exit codes mean', async folder => {
  const { code, out, err } = await folder.call(['--help'])
  expect({ code, err }).toEqual({ code: 0, err: '' })
  for (const word of [
    'print',
    'strip',
    'svg',
    'check',
    'cards',
    'shop',
    'schema',
    'new',
    'scale',
    'printer',
    'Exit codes: 0 done;',
  ])
    expect(out).toContain(word)
})

for (const words of [
  ['--help'],
  ['print', '--help'],
  ['strip', '--help'],
  ['svg', '--help'],
  ['check', '--help'],
  ['cards', '--help'],
]) {
  testInFolder(`the example of ${words.join(' ')} can be typed as it stands`, async folder => {
    const { code, out } = await folder.call(words)
    expect(code).toBe(0)
    const [, example] = /Example:\n {2}paperjig (.*)\n/.exec(out) ?? []
    expect(example).toBeDefined()
    await symlink(new URL('../../examples', import.meta.url), folder.in('examples'))
    const done = await folder.call(example!.split(' '))
    expect(done.code).toBe(words[0] === 'check' ? 1 : 0)
  })
}
