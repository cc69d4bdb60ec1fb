import { excerpt } from '../../finding/visible.ts'
import { nearestName } from '../../length/nearest-name.ts'
import { fault } from '../fault.ts'
import { type FitPlan, fitNames } from '../fit-plan.ts'
import { leaf } from './leaf.ts'
import type { Reader } from './reader.ts'
import { sizeIn } from './size.ts'

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
