import { expect, test } from 'vitest'
import { check } from '../../src/check/registry.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { modelOf } from '../model/model-of.ts'
import { largePlan } from './large-plan.ts'

test('a generated plan has ten features a part and no fault', () => {
  const model = modelOf(largePlan(60))
  expect(model.parts).toHaveLength(60)
  for (const { drawn } of model.parts) expect(drawn.features).toHaveLength(10)
  expect(check(model, defaultWorkshop)).toEqual([])
})
