import { expect } from 'vitest'
import { planSchema } from '../../src/plan/plan-schema.ts'
import { testInFolder } from './call.ts'

testInFolder('schema prints the JSON Schema of the plan file and nothing else', async folder => {
  const { code, out, err } = await folder.call(['schema'])
  expect({ code, err }).toEqual({ code: 0, err: '' })
  expect(JSON.parse(out)).toEqual(planSchema())
})

testInFolder('schema takes no file', async folder => {
  expect((await folder.call(['schema', 'plan.yaml'])).code).toBe(2)
})
