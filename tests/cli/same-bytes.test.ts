import { readdir, readFile } from 'node:fs/promises'
import { expect } from 'vitest'
import { demoPlan, type Folder, testInFolder } from './call.ts'

const elsewhere = { TZ: 'Pacific/Kiritimati', LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8' }

async function pdf(folder: Folder, env: Readonly<Record<string, string>>): Promise<string> {
  const { code, stdout } = await folder.call(['print', demoPlan, '-o', '-'], { env })
  expect(code).toBe(0)
  return stdout.toString('latin1')
}

async function svgs(folder: Folder, name: string, env: Readonly<Record<string, string>>) {
  expect((await folder.call(['svg', demoPlan, '-o', name], { env })).code).toBe(0)
  const files = (await readdir(folder.in(name))).sort()
  return Promise.all(files.map(async file => [file, await readFile(folder.in(`${name}/${file}`), 'utf8')]))
}

testInFolder('a plan printed twice gives the same bytes, in any time zone and language', async folder => {
  const first = await pdf(folder, { TZ: 'UTC' })
  expect((await pdf(folder, { TZ: 'UTC' })) === first).toBe(true)
  expect((await pdf(folder, elsewhere)) === first).toBe(true)
})

testInFolder('SVG files are the same twice, in any time zone and language', async folder => {
  const first = await svgs(folder, 'a', { TZ: 'UTC' })
  expect(await svgs(folder, 'b', elsewhere)).toEqual(first)
})

testInFolder('the report is the same in any time zone and language', async folder => {
  const [here, there] = await Promise.all([
    folder.call(['check', demoPlan], { env: { TZ: 'UTC' } }),
    folder.call(['check', demoPlan], { env: elsewhere }),
  ])
  expect(there.out).toBe(here.out)
})

testInFolder(
  'the file says no date of its own accord, and the one that SOURCE_DATE_EPOCH gives',
  async folder => {
    expect(await pdf(folder, {})).not.toContain('/CreationDate')
    const dated = await pdf(folder, { SOURCE_DATE_EPOCH: '1700000000', ...elsewhere })
    expect(dated).toContain('(D:20231114221320Z)')
  },
)
