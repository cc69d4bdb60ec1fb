import { excerpt } from '../../finding/visible.ts'
import { nearestName } from '../../length/nearest-name.ts'
import { fault } from '../../yaml/fault.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import type { Reader } from '../../yaml/schema/reader.ts'
import { sizeIn } from '../../yaml/schema/size.ts'
import { type FitPlan, fitNames } from '../fit-plan.ts'

/** A fit by its name, or a clearance. */
export const fit: Reader<FitPlan> = leaf(`one of ${fitNames.join(', ')}, or a clearance`, (node, fail) => {
  const { text, source } = node
  const named = fitNames.find(fit => fit === text)
  if (named) return { kind: 'named', fit: { value: named, source } }
  const nearest = nearestName(text, fitNames)
  if (nearest !== undefined && !/\d/.test(text)) {
    const facts = { found: excerpt(text), of: 'a fit', allowed: fitNames.join(', '), nearest }
    return void fail(fault('not-a-choice', source, facts))
  }
  const clearance = sizeIn(node, fail)
  return clearance && { kind: 'clearance', clearance }
})
