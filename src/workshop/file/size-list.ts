import { excerpt } from '../../finding/visible.ts'
import { drillSizes } from '../../length/drill-sizes.ts'
import { toMillimetres, type Unit } from '../../length/unit.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Leaf } from '../../yaml/document/tree.ts'
import { fault, limitPassed } from '../../yaml/fault.ts'
import { list } from '../../yaml/schema/collection.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import type { Fail, Reader } from '../../yaml/schema/reader.ts'
import { reader, readWithin } from '../../yaml/schema/reader.ts'
import { steps, union } from '../size-set.ts'
import { lengthIn, type Range } from './length.ts'
import { lengthText } from './length-text.ts'
import type { Setting } from './setting.ts'

/** Entries of one list, and sizes that one entry stands for. No shop has more. */
const mostEntries = 500
const mostSteps = 1_000

/**
 * The sizes that a shop has of something, in one unit: `[1/32 to 1/2 by 1/64, 5/8, "#43"]`. A bare number is in
 * that unit, whatever the file's own is.
 */
export function sizeList(what: string, unit: Unit, range: Range): Setting<readonly number[]> {
  const entry: Reader<readonly number[]> = leaf(
    'a size, or sizes such as 1/32 to 1/2 by 1/64',
    (node, fail) => entryIn(node, unit, what, range, fail),
  )
  const entries = list(
    {
      name: 'a list of sizes, such as [1/16 to 1/2 by 1/64]',
      items: 'sizes in this list',
      most: mostEntries,
    },
    entry,
  )
  return {
    reader: () =>
      reader(
        entries.description ?? '',
        (node, fail) => {
          const found = readWithin(entries, node, fail)
          return found && (() => union(...found))
        },
        jsonSchemaOf(entries),
      ),
    write: sizes =>
      `[${runsOf(sizes)
        .map(run => runText(run, unit))
        .join(', ')}]`,
  }
}

function entryIn(
  node: Leaf,
  unit: Unit,
  what: string,
  range: Range,
  fail: Fail,
): readonly number[] | undefined {
  const drill = drillSizes.find(({ name }) => name === node.text)
  if (drill) return [toMillimetres(drill.inches, 'inch')]
  const [firstText, lastText, stepText] = node.text.split(/ to | by /) as [string, string?, string?]
  const ranges = / to .+ by /.test(node.text)
  if (!ranges) {
    const one = lengthIn(node, unit, what, range, fail)
    return one === undefined ? undefined : [one]
  }
  const at = (text: string, from: number) =>
    lengthIn(node, unit, what, { least: 0, largest: range.largest }, fail, { from, text })
  const lastAt = firstText.length + ' to '.length
  const first = at(firstText, 0)
  const last = at(lastText ?? '', lastAt)
  const step = at(stepText ?? '', lastAt + (lastText ?? '').length + ' by '.length)
  if (first === undefined || last === undefined || step === undefined) return undefined
  if (!(last > first && step > coincident)) {
    return void fail(fault('steps-backward', node.source, { found: excerpt(node.text) }))
  }
  const count = Math.floor((last - first) / step) + 1
  if (count > mostSteps) return void fail(limitPassed(node.source, 'sizes in one range', count, mostSteps))
  return steps(first, last, step)
}

/** Equal steps from one size to another; a size alone has no step. */
type Run = { readonly first: number; readonly last: number; readonly step?: number }

/** A list this long or longer with equal steps is written as a range. */
const shortestRange = 4

function runsOf(sizes: readonly number[]): readonly Run[] {
  const runs: Run[] = []
  for (let from = 0; from < sizes.length; ) {
    const step = (sizes[from + 1] ?? Number.NaN) - sizes[from]!
    let to = from
    while (Math.abs(sizes[to + 1]! - sizes[from]! - step * (to + 1 - from)) <= coincident) to += 1
    if (to - from + 1 >= shortestRange) {
      runs.push({ first: sizes[from]!, last: sizes[to]!, step })
      from = to + 1
    } else {
      runs.push({ first: sizes[from]!, last: sizes[from]! })
      from += 1
    }
  }
  return runs
}

function runText({ first, last, step }: Run, unit: Unit): string {
  const from = lengthText(first, unit)
  return step === undefined ? from : `${from} to ${lengthText(last, unit)} by ${lengthText(step, unit)}`
}
