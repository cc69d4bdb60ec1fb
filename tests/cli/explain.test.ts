import { expect } from 'vitest'
import { checkRules } from '../../src/check/registry.ts'
import { soundPlan, testInFolder } from './call.ts'

testInFolder('check --explain says what a rule is for, its limit and where that comes from', async folder => {
  const { code, out, err } = await folder.call(['check', '--explain', 'hole-near-edge'])
  expect({ code, err }).toEqual({ code: 0, err: '' })
  expect(out).toMatch(/^hole-near-edge\n {2}\S/)
  expect(out).toContain('Limit: ')
  expect(out).toContain('Where it comes from: ')
})

testInFolder('the limit is that of the shop', async folder => {
  await folder.write('shop.yaml', 'paperjig-workshop: 1\nunits: inch\nsmallest-piece: 4 1/8\n')
  const usual = await folder.call(['check', '--explain', 'small-piece'])
  const own = await folder.call(['check', '--explain', 'small-piece', '--shop', 'shop.yaml'])
  expect(usual.out).toContain('3" (76.2 mm)')
  expect(own.out).toContain('4 1/8" (104.78 mm)')
})

testInFolder(
  'a rule that there is not is said with the nearest, or with all that there are',
  async folder => {
    const near = await folder.call(['check', '--explain', 'hole-near-egde'])
    expect([near.code, near.err]).toEqual([
      2,
      'paperjig: there is no rule hole-near-egde; did you mean hole-near-edge?\n',
    ])
    const far = await folder.call(['check', '--explain', 'zzzzzzzzzzzz'])
    for (const rule of checkRules) expect(far.err).toContain(rule)
  },
)

testInFolder('--explain looks at no plan, and without it a plan is wanted', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const both = await folder.call(['check', 'rack.yaml', '--explain', 'small-piece'])
  expect([both.code, both.err]).toEqual([2, expect.stringContaining('looks at no plan')])
  const none = await folder.call(['check'])
  expect([none.code, none.err]).toEqual([2, expect.stringContaining('the plan file is missing')])
})
