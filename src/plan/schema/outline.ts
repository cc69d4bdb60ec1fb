import { isSide } from '../../finding/face-name.ts'
import type { Source } from '../../finding/source.ts'
import { sourceOf } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { list } from '../../yaml/schema/collection.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { choice } from '../../yaml/schema/leaf.ts'
import { type Fail, type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import { maxSteps } from '../limits.ts'
import type { Located, OutlinePlan, OutlineStep } from '../plan.ts'
import { outlineStep } from './outline-step.ts'

/** The steps with the place of their list. */
export type WrittenOutline = Omit<OutlinePlan, 'symmetric'>

const steps = list(
  { name: 'the steps round the outline', items: 'steps of an outline', most: maxSteps },
  outlineStep,
)

/** Two corners and the way back are the least that bounds anything: `to`, and an arc or a curve, or two lines. */
export const outline: Reader<WrittenOutline> = reader(
  'the steps round the outline, the first a corner: - to: [0, 0]',
  (node, fail) => {
    const read = readWithin(steps, node, fail)
    if (read === undefined) return undefined
    const [first, ...others] = read
    const source = sourceOf(node)
    if (!first || others.length === 0) {
      const facts = { key: 'outline', wanted: 'two steps at least' }
      return void fail(fault('nothing-in-it', source, facts))
    }
    if (first.kind !== 'line') {
      const wanted = 'the corner that the outline begins at: - to: [0, 0]'
      return void fail(fault('wrong-kind', first.source, { found: 'an arc or curve', wanted }))
    }
    return namesDiffer(read, fail) ? { steps: [first, ...others], source } : undefined
  },
  jsonSchemaOf(steps),
)

export const symmetric: Reader<Located<'left-right' | 'top-bottom'>> = choice('a way to mirror', [
  'left-right',
  'top-bottom',
])

function namesDiffer(steps: readonly OutlineStep[], fail: Fail): boolean {
  const taken = new Map<string, Source>()
  let differ = true
  for (const name of steps.flatMap(({ name, cornerName }) => [name, cornerName])) {
    if (!name) continue
    const first = taken.get(name.value)
    if (first) {
      differ = false
      const twice = fault('duplicate-edge', name.source, { name: name.value })
      fail({ ...twice, places: [...twice.places, { source: first }] })
    } else if (isSide(name.value)) {
      differ = false
      fail(fault('reserved-name', name.source, { name: name.value, means: 'a side of the part' }))
    } else taken.set(name.value, name.source)
  }
  return differ
}
