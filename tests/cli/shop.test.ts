import { readFile } from 'node:fs/promises'
import { expect } from 'vitest'
import { soundPlan, testInFolder } from './call.ts'

/** A shop that has one bit, which is none of those the plan asks for. */
const oneBit = 'paperjig-workshop: 1\nunits: mm\nbits: { mm: [5], inch: [] }\n'

testInFolder('shop shows the usual shop, and what it shows is a workshop file', async folder => {
  const { code, out, err } = await folder.call(['shop'])
  expect({ code, err }).toEqual({ code: 0, err: '' })
  await folder.write('shop.yaml', out)
  const again = await folder.call(['shop', '--shop', 'shop.yaml'])
  expect(again).toMatchObject({ code: 0, out, err: '' })
})

testInFolder('shop --write writes a file that the plan is then checked with', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const { code, out } = await folder.call(['shop', '--write', 'shop.yaml', '--units', 'mm'])
  expect([code, out]).toEqual([0, expect.stringMatching(/^wrote shop\.yaml; /)])
  expect(await readFile(folder.in('shop.yaml'), 'utf8')).toContain('\nunits: mm\n')
  const check = await folder.call(['check', 'rack.yaml', '--shop', 'shop.yaml'])
  expect(check).toMatchObject({ code: 0, out: 'nothing found\n', err: '' })
})

testInFolder('shop --write writes nothing over what is there', async folder => {
  await folder.write('shop.yaml', 'mine')
  const { code, err } = await folder.call(['shop', '--write', 'shop.yaml'])
  expect([code, err]).toEqual([2, expect.stringContaining('shop.yaml is there already')])
  expect(await readFile(folder.in('shop.yaml'), 'utf8')).toBe('mine')
})

testInFolder('--shop says for print, svg and check what the shop has', async folder => {
  await folder.write('rack.yaml', soundPlan)
  await folder.write('shop.yaml', oneBit)
  for (const [command, stream] of [
    ['check', 'out'],
    ['print', 'err'],
    ['svg', 'err'],
  ] as const) {
    const without = await folder.call([command, 'rack.yaml'])
    expect(without[stream]).toBe('nothing found\n')
    const call = await folder.call([command, 'rack.yaml', '--shop', 'shop.yaml'])
    expect(call[stream]).toMatch(/bit/)
  }
})

testInFolder(
  'a workshop file with a fault is shown with its place, and nothing is done with it',
  async folder => {
    await folder.write('rack.yaml', soundPlan)
    await folder.write('shop.yaml', oneBit.replace('bits', 'bitts'))
    for (const words of [['shop'], ['check', 'rack.yaml'], ['print', 'rack.yaml'], ['svg', 'rack.yaml']]) {
      const { code, out, err } = await folder.call([...words, '--shop', 'shop.yaml'])
      expect(code).toBe(2)
      expect(out + err).toContain('shop.yaml:3:1')
      expect(out + err).toContain('bits')
    }
    expect(await folder.names()).toEqual(['rack.yaml', 'shop.yaml'])
  },
)

testInFolder('a workshop file that is not there is said, and so is one that is a folder', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const missing = await folder.call(['check', 'rack.yaml', '--shop', 'sohp.yaml'])
  expect([missing.code, missing.err]).toEqual([2, 'paperjig: there is no file sohp.yaml\n'])
  const dir = await folder.call(['check', 'rack.yaml', '--shop', '.'])
  expect([dir.code, dir.err]).toEqual([2, 'paperjig: . is a folder; give the workshop file in it\n'])
})

testInFolder('plan and workshop cannot both come by standard input', async folder => {
  const { code, err } = await folder.call(['check', '-', '--shop', '-'], { stdin: soundPlan })
  expect([code, err]).toEqual([2, expect.stringContaining('cannot both come from standard input')])
})
