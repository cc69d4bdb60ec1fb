import type { Source } from '../../finding/source.ts'
import { excerpt } from '../../finding/visible.ts'
import { fault } from '../../yaml/fault.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import type { Fail, Reader } from '../../yaml/schema/reader.ts'
import type { ReferencePlan } from '../plan.ts'

const wanted = 'a reference: part.cut, part/2.cut, part.row.3, part.row.all or part.left'
const name = '[a-z][a-z0-9-]*'
const pattern = new RegExp(`^(${name})(?:/([1-9]\\d{0,4}))?(?:\\.(${name})(?:\\.([1-9]\\d{0,4}|all))?)?$`)

export const reference: Reader<ReferencePlan> = leaf(wanted, ({ text, source }, fail) =>
  readReference(text, source, fail),
)

function readReference(written: string, source: Source, fail: Fail): ReferencePlan | undefined {
  const [, part, piece, name, member] = pattern.exec(written) ?? []
  if (part === undefined) {
    return void fail(fault('wrong-kind', source, { found: 'a text', text: excerpt(written), wanted }))
  }
  return {
    part,
    ...(piece === undefined ? {} : { piece: Number(piece) }),
    ...(name === undefined ? {} : { name }),
    ...(member === undefined ? {} : { member: member === 'all' ? ('all' as const) : Number(member) }),
    written,
    source,
  }
}
