import { excerpt } from '../../finding/visible.ts'
import { fault } from '../../yaml/fault.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import type { Reader } from '../../yaml/schema/reader.ts'
import type { ConfirmedPlan } from '../plan.ts'

const wanted = 'a name from let, a part, pin or stock, or a cut of a part: gauge, side-frame, side-frame.step'

/** The names of `let` have capitals and underscores, ids have hyphens. */
const pattern = /^([\p{L}][\p{L}0-9_-]*)(?:\.([a-z][a-z0-9-]*))?$/u

/** What has been scaled off the drawing and asked for or measured since. */
export const confirmed: Reader<ConfirmedPlan> = leaf(wanted, ({ text, source }, fail) => {
  const [, name, cut] = pattern.exec(text) ?? []
  if (name !== undefined) return { name, ...(cut === undefined ? {} : { cut }), source }
  return void fail(fault('wrong-kind', source, { found: 'a text', text: excerpt(text), wanted }))
})
