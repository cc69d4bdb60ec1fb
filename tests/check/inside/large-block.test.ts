import { expect, test } from 'vitest'
import { check } from '../../../src/check/registry.ts'
import { subjectOf } from '../../../src/check/subject/subject.ts'
import { nearAmong } from '../../../src/geometry/solid/near-boxes.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { modelOf } from '../../model/model-of.ts'
import { largeBlock } from './large-block.ts'

test('a generated block has holes on six faces, many near one another, and no fault', () => {
  const model = modelOf(largeBlock(240))
  const [{ inside, part }] = subjectOf(model, defaultWorkshop).parts as [
    ReturnType<typeof subjectOf>['parts'][number],
  ]
  expect(part.drawn.features).toHaveLength(216)
  expect(new Set(part.drawn.features.map(({ face }) => face)).size).toBe(6)
  const boxes = inside.bores.map(({ box }) => box)
  expect(nearAmong(boxes, 9).length).toBeGreaterThan(400)
  expect(check(model, defaultWorkshop)).toEqual([])
})
