import { sides } from '../../finding/side.ts'
import type { Source } from '../../finding/source.ts'
import { excerpt } from '../../finding/visible.ts'
import { cut } from '../cut/cut.ts'
import { cutName } from '../cut/cut-name.ts'
import { fault } from '../fault.ts'
import { maxCuts, maxPieces } from '../limits.ts'
import type { PartPlan, PartSize, WrittenLength } from '../plan.ts'
import type { List } from '../yaml/tree.ts'
import { list } from './collection.ts'
import { corners } from './corners.ts'
import { id } from './id.ts'
import { choice, count, flag, located } from './leaf.ts'
import { mapping } from './mapping.ts'
import { type Fail, optional, type Reader } from './reader.ts'
import { dimensions } from './size.ts'
import { label, note } from './text.ts'

/** A part without its id, which is the key it stands under. */
export type UnnamedPart = Omit<PartPlan, 'id'>

const later = ['outline', 'round', 'sides', 'transfer', 'offset', 'measured', 'wrap', 'page', 'grain', 'seam']

export const part: Reader<UnnamedPart> = mapping(
  { name: 'a part', example: 'size: 6 x 2 x 1/2', later },
  {
    label: optional(label),
    note: optional(note),
    make: optional(count(maxPieces)),
    mirrored: optional(flag),
    from: optional(id),
    size: dimensions('length x width x thickness, such as 6 7/8 x 1 5/16 x 7/16', [2, 3]),
    corners: optional(corners),
    'face-edge': optional(choice('a face edge', ['bottom', 'top'])),
    'reference-end': optional(choice('a reference end', ['left', 'right'])),
    cuts: optional(list({ name: 'a list of cuts', items: 'cuts in a part', most: maxCuts }, cut, ownNames)),
  },
  (values, { heading, source, keys }, fail) => {
    const { size, corners = {}, cuts = [], label, note, from } = values
    const make = values.make ?? located(1, heading)
    const mirrored = values.mirrored?.value ?? false
    if (mirrored && make.value % 2 === 1) {
      const odd = fault('odd-mirrored', make.source, { count: String(make.value) })
      return void fail({ ...odd, places: [...odd.places, { source: keys.get('mirrored')! }] })
    }
    const sized = partSize(size)
    return (
      sized && {
        ...(label ? { label } : {}),
        ...(note ? { note } : {}),
        ...(from ? { from } : {}),
        make,
        mirrored,
        size: sized,
        corners,
        faceEdge: values['face-edge'] ?? located('bottom', heading),
        referenceEnd: values['reference-end'] ?? located('left', heading),
        cuts,
        source,
      }
    )
  },
)

function partSize([length, width, thickness]: readonly WrittenLength[]): PartSize | undefined {
  if (!length || !width) return undefined
  const source = { ...length.source, to: (thickness ?? width).source.to }
  return thickness ? { length, width, thickness, source } : { length, width, source }
}

/** The cuts of a part have names of their own, and none is called like a side, which `part.left` already means. */
function ownNames(cuts: List, fail: Fail): void {
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
