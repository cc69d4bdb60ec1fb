import { expect } from 'vitest'
import { demoPlan, soundPlan, testInFolder } from './call.ts'

testInFolder('print ends with 0, says what it wrote, and what it found', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const { code, out, err } = await folder.call(['print', 'rack.yaml'])
  expect({ code, out, err }).toEqual({ code: 0, out: 'wrote rack.pdf: 2 pages\n', err: 'nothing found\n' })
  expect(await folder.names()).toEqual(['rack.pdf', 'rack.yaml'])
})

testInFolder('svg ends with 0 and says what it wrote', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const { code, out, err } = await folder.call(['svg', 'rack.yaml'])
  expect({ code, out, err }).toEqual({
    code: 0,
    out: 'wrote rack: 2 pages, 1 part drawing\n',
    err: 'nothing found\n',
  })
})

testInFolder('check ends with 0 where nothing is wrong', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const { code, out, err } = await folder.call(['check', 'rack.yaml'])
  expect({ code, out, err }).toEqual({ code: 0, out: 'nothing found\n', err: '' })
})

testInFolder('check ends with 1 where it finds errors, and prints them on standard output', async folder => {
  const { code, out, err } = await folder.call(['check', demoPlan])
  expect(code).toBe(1)
  expect(out).toContain('hole lamp of roof has no place')
  expect(out).toContain('coupling of buffer-beam goes 1/16" (1.59 mm)')
  expect(out).toMatch(/\n4 errors(, \d+ notes?)?\n$/)
  expect(err).toBe('')
})

testInFolder('check --json ends with the same codes, and what it prints is JSON', async folder => {
  const { code, out } = await folder.call(['check', '--json', demoPlan])
  expect(code).toBe(1)
  const { paperjig, plan, findings } = JSON.parse(out)
  expect({ paperjig, plan }).toEqual({ paperjig: 1, plan: 'Cliff railway car, 1:16' })
  const errors = findings.filter(({ severity }: { severity: string }) => severity === 'error')
  expect(errors).toHaveLength(4)
  expect(errors[2]).toMatchObject({
    rule: 'outside-part',
    severity: 'error',
    places: [{ file: demoPlan, part: 'buffer-beam', feature: 'coupling' }],
    measured: { value: 1.5875, unit: 'mm' },
  })
})

testInFolder(
  'check --json of a plan that cannot be read is JSON too, with plan: null and code 2',
  async folder => {
    await folder.write('bad.yaml', 'paperjig: 1\ntitel: x\n')
    const { code, out, err } = await folder.call(['check', '--json', 'bad.yaml'])
    expect({ code, err }).toEqual({ code: 2, err: '' })
    expect(JSON.parse(out)).toMatchObject({ paperjig: 1, plan: null })
  },
)

testInFolder('print of a plan with errors ends with 0 all the same', async folder => {
  const { code, err } = await folder.call(['print', demoPlan, '-o', 'car.pdf'])
  expect(code).toBe(0)
  expect(err).toMatch(/\n4 errors(, \d+ notes?)?\n$/)
})

testInFolder('print --strict of it ends with 1, and the PDF is written', async folder => {
  const { code } = await folder.call(['print', demoPlan, '-o', 'car.pdf', '--strict'])
  expect(code).toBe(1)
  expect(await folder.names()).toEqual(['car.pdf'])
})

testInFolder('a part that does not fit is said, and the others are printed', async folder => {
  await folder.write('long.yaml', `${soundPlan}  beam:\n    size: 9000 x 9000 x 8\n    transfer: template\n`)
  const { code, out, err } = await folder.call(['print', 'long.yaml'])
  expect({ code, out }).toEqual({ code: 0, out: 'wrote long.pdf: 2 pages\n' })
  expect(err).toContain('does not fit on A4 paper')
})

testInFolder('a rectangle too large for any template is marked out from a reduced drawing', async folder => {
  await folder.write('long.yaml', soundPlan.replace('120 x 30', '9000 x 9000'))
  const { code, err } = await folder.call(['print', 'long.yaml', '--sheet', 'mark-out'])
  expect({ code, err }).toMatchObject({ code: 0 })
  expect(err).not.toContain('does not fit')
})

testInFolder('where nothing fits nothing is written, and the code is 2', async folder => {
  const large = soundPlan.replace('size: 120 x 30 x 8', 'size: 9000 x 9000 x 8\n    transfer: template')
  await folder.write('long.yaml', large)
  const { code, out } = await folder.call(['print', 'long.yaml', '--sheet', 'template'])
  expect({ code, out }).toEqual({ code: 2, out: '' })
  expect(await folder.names()).toEqual(['long.yaml'])
})
