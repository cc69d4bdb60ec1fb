import { lstat, mkdir, readdir, readFile, symlink } from 'node:fs/promises'
import { expect } from 'vitest'
import { demoPlan, soundPlan, testInFolder } from './call.ts'

testInFolder('a PDF that is there already is replaced', async folder => {
  await folder.write('rack.yaml', soundPlan)
  await folder.write('rack.pdf', 'old')
  expect((await folder.call(['print', 'rack.yaml'])).code).toBe(0)
  expect((await readFile(folder.in('rack.pdf'))).subarray(0, 5).toString()).toBe('%PDF-')
  expect(await folder.names()).toEqual(['rack.pdf', 'rack.yaml'])
})

testInFolder('a PDF that is there already stays when the plan has gone bad', async folder => {
  await folder.write('rack.yaml', soundPlan.replace('size', 'seize'))
  await folder.write('rack.pdf', 'old')
  expect((await folder.call(['print', 'rack.yaml'])).code).toBe(2)
  expect(await readFile(folder.in('rack.pdf'), 'utf8')).toBe('old')
})

testInFolder('a link is followed, and stays a link', async folder => {
  await folder.write('rack.yaml', soundPlan)
  await folder.write('real.pdf', 'old')
  await symlink('real.pdf', folder.in('link.pdf'))
  expect((await folder.call(['print', 'rack.yaml', '-o', 'link.pdf'])).code).toBe(0)
  expect((await lstat(folder.in('link.pdf'))).isSymbolicLink()).toBe(true)
  expect((await readFile(folder.in('real.pdf'))).subarray(0, 5).toString()).toBe('%PDF-')
})

testInFolder('the plan is not overwritten through a link either', async folder => {
  await folder.write('rack.yaml', soundPlan)
  await symlink('rack.yaml', folder.in('rack.pdf'))
  const { code } = await folder.call(['print', 'rack.yaml'])
  expect(code).toBe(2)
  expect(await readFile(folder.in('rack.yaml'), 'utf8')).toBe(soundPlan)
})

testInFolder('a device is written to and not replaced', async folder => {
  await folder.write('rack.yaml', soundPlan)
  expect((await folder.call(['print', 'rack.yaml', '-o', '/dev/null'])).code).toBe(0)
  expect((await lstat('/dev/null')).isCharacterDevice()).toBe(true)
})

testInFolder(
  'svg writes a page and a part each into a file, into a folder that may be there',
  async folder => {
    await mkdir(folder.in('car'))
    await folder.write('car/note.txt', 'mine')
    const { code, out } = await folder.call([
      'svg',
      demoPlan,
      '-o',
      'car',
      '--part',
      'side-frame',
      'floor',
      '--sheet',
      'template',
    ])
    expect({ code, out }).toEqual({ code: 0, out: 'wrote car: 2 pages, 3 part drawings\n' })
    expect((await readdir(folder.in('car'))).sort()).toEqual([
      'floor-template.svg',
      'note.txt',
      'page-1.svg',
      'page-2.svg',
      'side-frame-template-mirrored.svg',
      'side-frame-template.svg',
    ])
  },
)

testInFolder('--part may be said several times, and print keeps the order of the plan', async folder => {
  const { code, out } = await folder.call([
    'print',
    demoPlan,
    '--part',
    'roof',
    '--part',
    'floor',
    '--sheet',
    'template',
    '-o',
    'a.pdf',
  ])
  expect({ code, out }).toEqual({ code: 0, out: 'wrote a.pdf: 2 pages\n' })
})
