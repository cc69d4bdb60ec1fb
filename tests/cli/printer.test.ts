import { mkdir, readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { configFolder } from '../../src/cli/input/config-folder.ts'
import { type Folder, soundPlan, testInFolder } from './call.ts'

/** What is kept for a user goes into the test's own folder. */
const env = (folder: Folder) => ({ XDG_CONFIG_HOME: folder.path })
const readings = ['--across', '179.1', '--along', '239.6']

testInFolder('scale writes the sheet to measure by', async folder => {
  const { code, out, err } = await folder.call(['scale', '--paper', 'a4'])
  expect({ code, out, err }).toEqual({ code: 0, out: 'wrote scale.pdf: 1 page\n', err: '' })
  const wrong = await folder.call(['scale', '--paper', 'a44', '-o', 'other.pdf'])
  expect([wrong.code, wrong.err]).toEqual([2, expect.stringContaining('"a44" is no paper')])
  expect(await folder.names()).toEqual(['scale.pdf'])
})

testInFolder('printer keeps what was read, and print is corrected for it and says so', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const kept = await folder.call(['printer', 'laser', ...readings], { env: env(folder) })
  expect(kept).toMatchObject({ code: 0, err: '' })
  expect(kept.out).toContain('laser: 0.50 % short across, 0.17 % short along')
  const file = JSON.parse(await readFile(folder.in('paperjig/printers.json'), 'utf8'))
  // the shares are the readings over the bars of 180 and 240 mm
  expect(file.printers).toEqual([{ name: 'laser', across: 179.1 / 180, along: 239.6 / 240, lean: 0 }])
  const print = await folder.call(['print', 'rack.yaml', '--printer', 'laser'], { env: env(folder) })
  expect(print).toMatchObject({ code: 0, out: 'wrote rack.pdf: 2 pages\n' })
  const plain = await folder.call(['print', 'rack.yaml', '-o', 'plain.pdf'], { env: env(folder) })
  expect(plain.code).toBe(0)
  expect(await readFile(folder.in('rack.pdf'))).not.toEqual(await readFile(folder.in('plain.pdf')))
})

testInFolder(
  'printer without a name lists those that are known, the newest reading of each',
  async folder => {
    expect((await folder.call(['printer'], { env: env(folder) })).out).toContain('no printer is known')
    await folder.call(['printer', 'laser', ...readings], { env: env(folder) })
    await folder.call(['printer', 'laser', '--across', '180', '--along', '24 cm'], { env: env(folder) })
    const { out } = await folder.call(['printer'], { env: env(folder) })
    expect(out).toBe('laser: true across, true along\n')
  },
)

testInFolder('a printer that is not known is said with the nearest, and nothing is printed', async folder => {
  await folder.write('rack.yaml', soundPlan)
  await folder.call(['printer', 'laser', ...readings], { env: env(folder) })
  const { code, err } = await folder.call(['print', 'rack.yaml', '--printer', 'lasre'], { env: env(folder) })
  expect([code, err]).toEqual([2, expect.stringContaining('did you mean "laser"')])
  expect(await folder.names()).toEqual(['paperjig', 'rack.yaml'])
})

for (const [what, words, sentence] of [
  ['a reading is missing', ['laser', '--across', '180'], 'both readings are wanted'],
  ['there is one diagonal', ['laser', ...readings, '--diagonals', '212'], 'the two readings A and B'],
  ['a reading is none', ['laser', '--across', 'wide', '--along', '240'], '"wide"'],
  ['a page was made to fit', ['laser', '--across', '169.2', '--along', '225.6'], '100 %'],
  ['the bars are none', ['laser', ...readings, '--bars', '5'], 'no bars of a scale sheet'],
] as const) {
  testInFolder(`printer keeps nothing where ${what}`, async folder => {
    const { code, err } = await folder.call(['printer', ...words], { env: env(folder) })
    expect([code, err]).toEqual([2, expect.stringContaining(sentence)])
    expect(await folder.names()).toEqual([])
  })
}

testInFolder('a file of printers that something else has written to is left as it is', async folder => {
  await mkdir(folder.in('paperjig'))
  await folder.write('paperjig/printers.json', '{ "printers": "mine" }')
  const { code, err } = await folder.call(['printer', 'laser', ...readings], { env: env(folder) })
  expect([code, err]).toEqual([2, expect.stringContaining('move it away')])
  expect(await readFile(folder.in('paperjig/printers.json'), 'utf8')).toBe('{ "printers": "mine" }')
})

// Source: XDG Base Directory Specification 0.8 (a relative path is to be ignored); the other systems from memory
test('what belongs to the user is kept where the system keeps such things', () => {
  expect(configFolder({ XDG_CONFIG_HOME: '/c' }, 'linux', '/h')).toBe('/c/paperjig')
  expect(configFolder({ XDG_CONFIG_HOME: 'c' }, 'linux', '/h')).toBe('/h/.config/paperjig')
  expect(configFolder({}, 'darwin', '/h')).toBe('/h/Library/Preferences/paperjig')
  expect(configFolder({ APPDATA: '/a' }, 'win32', '/h')).toBe('/a/paperjig')
})
