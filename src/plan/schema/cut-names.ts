import { sides } from '../../finding/side.ts'
import type { Source } from '../../finding/source.ts'
import { excerpt } from '../../finding/visible.ts'
import type { List } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import type { Fail } from '../../yaml/schema/reader.ts'
import { cutName } from '../cut/cut-name.ts'
import type { CutPlan } from '../plan.ts'

/** The cuts of a part have names of their own, and none is called like a side, which `part.left` already means. */
export function cutNamesDiffer(cuts: List, fail: Fail): void {
  const taken = new Map<string, Source>()
  for (const name of cuts.map(cutName)) {
    if (!name) continue
    const first = taken.get(name.text)
    if (first) {
      const twice = fault('duplicate-id', name.source, { id: excerpt(name.text) })
      fail({ ...twice, places: [...twice.places, { source: first }] })
    } else taken.set(name.text, name.source)
    if (sides.some(side => side === name.text)) {
      fail(fault('reserved-name', name.source, { name: name.text, means: 'a side of the part' }))
    }
  }
}

/** Cuts without a name are numbered by their kind: hole-1, hole-2; a name that the maker took is passed over. */
export function withNames(cuts: readonly CutPlan[]): readonly CutPlan[] {
  const taken = new Set(cuts.map(({ id }) => id.value))
  const last = new Map<CutPlan['kind'], number>()
  return cuts.map(cut => {
    if (cut.id.value !== '') return cut
    let number = last.get(cut.kind) ?? 0
    do number += 1
    while (taken.has(`${cut.kind}-${number}`))
    last.set(cut.kind, number)
    return { ...cut, id: { value: `${cut.kind}-${number}`, source: cut.id.source } }
  })
}
