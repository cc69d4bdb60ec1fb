import { readdir, readFile } from 'node:fs/promises'
import { expect } from 'vitest'
import { soundPlan, testInFolder } from './call.ts'

const twoRails = soundPlan.replace('rail:\n', 'rail:\n    make: 2\n')

testInFolder('--copies part draws one for all pieces, --copies piece one for each', async folder => {
  await folder.write('rack.yaml', twoRails)
  const drawn = async (copies: string) => {
    const args = ['svg', 'rack.yaml', '-o', copies, '--copies', copies, '--sheet', 'template']
    expect((await folder.call(args)).code).toBe(0)
    expect(await readdir(folder.in(copies))).toEqual(['page-1.svg', 'rail-template.svg'])
    return (await readFile(folder.in(`${copies}/page-1.svg`), 'utf8')).match(/<g id="rail-template[^"]*"/g)
  }
  expect(
    (await drawn('part'))?.filter(group => /template"/.test(group) || /template-\d"/.test(group)),
  ).toHaveLength(1)
  expect((await drawn('piece'))?.filter(group => /template-\d"/.test(group))).toHaveLength(2)
})

for (const [option, value, sentence] of [
  ['--margin', '80mm', 'no margin'],
  ['--margin', 'wide', 'no margin'],
  ['--overlap', '1mm', 'no overlap'],
] as const) {
  testInFolder(`${option} ${value} is refused in a sentence, and nothing is written`, async folder => {
    await folder.write('rack.yaml', soundPlan)
    const { code, err } = await folder.call(['print', 'rack.yaml', option, value])
    expect([code, err]).toEqual([2, expect.stringContaining(sentence)])
    expect(await folder.names()).toEqual(['rack.yaml'])
  })
}

testInFolder('--margin and --overlap change what is printed', async folder => {
  await folder.write('rack.yaml', soundPlan.replace('120 x 30', '600 x 30'))
  const print = async (name: string, ...options: string[]) => {
    expect((await folder.call(['print', 'rack.yaml', '-o', name, ...options])).code).toBe(0)
    return readFile(folder.in(name))
  }
  const usual = await print('a.pdf')
  expect(await print('b.pdf', '--margin', '15mm')).not.toEqual(usual)
  expect(await print('c.pdf', '--overlap', '20 mm')).not.toEqual(usual)
})

/** The side of the square that a path of the file spans, in its own millimetres. */
async function spanOfPart(path: string): Promise<number> {
  const [, width] = /viewBox="[^ ]+ [^ ]+ ([^ ]+)/.exec(await readFile(path, 'utf8'))!
  return Number(width)
}

testInFolder('svg --kerf moves the lines of a part by half of it, in the units of the plan', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const span = async (name: string, ...options: string[]) => {
    expect((await folder.call(['svg', 'rack.yaml', '-o', name, ...options])).code).toBe(0)
    return spanOfPart(folder.in(`${name}/rail-template.svg`))
  }
  const plain = await span('plain')
  expect((await span('wide', '--kerf', '0.4')) - plain).toBeCloseTo(0.4, 3)
  expect((await span('inch', '--kerf', '1/64 in')) - plain).toBeCloseTo(25.4 / 64, 3)
})

testInFolder('svg --hairline and --no-text are for the pages', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const page = async (name: string, ...options: string[]) => {
    expect((await folder.call(['svg', 'rack.yaml', '-o', name, ...options])).code).toBe(0)
    return readFile(folder.in(`${name}/page-1.svg`), 'utf8')
  }
  const plain = await page('plain')
  const fine = await page('fine', '--hairline')
  const silent = await page('silent', '--no-text')
  const widths = (svg: string) => [...new Set(svg.match(/stroke-width="[^"]+"/g))]
  expect(widths(plain).length).toBeGreaterThan(1)
  expect(widths(fine)).toEqual(['stroke-width="0.0254"'])
  expect(silent.length).toBeLessThan(plain.length)
})

testInFolder('a kerf that is none is refused', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const { code, err } = await folder.call(['svg', 'rack.yaml', '--kerf', 'thin'])
  expect([code, err]).toEqual([2, expect.stringContaining('"thin" is no kerf')])
  expect(await folder.names()).toEqual(['rack.yaml'])
})
