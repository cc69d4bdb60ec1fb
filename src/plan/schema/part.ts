import { isLeaf, isMapping } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { list } from '../../yaml/schema/collection.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { choice, count, flag, located } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional, type Reader, reader, readWithin } from '../../yaml/schema/reader.ts'
import { dimensions, size } from '../../yaml/schema/size.ts'
import { cut } from '../cut/cut.ts'
import { maxCuts, maxPieces } from '../limits.ts'
import { transferNames } from '../part-plan.ts'
import type { PartPlan, WrittenLength } from '../plan.ts'
import { cutNamesDiffer, withNames } from './cut-names.ts'
import { id } from './id.ts'
import { ownSides, withPlainSides } from './own-sides.ts'
import { partShape, shapeKeys } from './part-shape.ts'
import { label, note } from './text.ts'

/** A part without its id, which is the key it stands under. */
export type UnnamedPart = Omit<PartPlan, 'id'>

const later = ['grain', 'seam']

const anyShape = { anyOf: [{ required: ['size'] }, { required: ['outline'] }, { required: ['round'] }] }

const inKeys: Reader<UnnamedPart> = mapping(
  { name: 'a part', example: 'size: 6 x 2 x 1/2', later, json: anyShape },
  {
    label: optional(label),
    note: optional(note),
    page: optional(label),
    make: optional(count(maxPieces)),
    mirrored: optional(flag),
    from: optional(id),
    ...shapeKeys,
    offset: optional(size),
    transfer: optional(choice('a way from paper to wood', transferNames)),
    wrap: optional(choice('a way to lay out faces', ['panels', 'net'])),
    measured: optional(dimensions('length x width x thickness, such as 6 29/32 x 1 5/16 x 7/16', [3])),
    sides: optional(ownSides),
    'face-edge': optional(choice('a face edge', ['bottom', 'top'])),
    'reference-end': optional(choice('a reference end', ['left', 'right'])),
    cuts: optional(
      list({ name: 'a list of cuts', items: 'cuts in a part', most: maxCuts }, cut, cutNamesDiffer),
    ),
  },
  (values, place, fail) => {
    const { heading, source, keys } = place
    const { cuts = [], label, note, page, from, offset, transfer, wrap, sides = {} } = values
    const make = values.make ?? located(1, heading)
    const mirrored = values.mirrored?.value ?? false
    if (mirrored && make.value % 2 === 1) {
      const odd = fault('odd-mirrored', make.source, { count: String(make.value) })
      return void fail({ ...odd, places: [...odd.places, { source: keys.get('mirrored')! }] })
    }
    const shaped = partShape(values, place, fail)
    const measured = values.measured && sizesOf(values.measured)
    return (
      shaped && {
        ...(label ? { label } : {}),
        ...(note ? { note } : {}),
        ...(page ? { page } : {}),
        ...(from ? { from } : {}),
        ...(offset ? { offset } : {}),
        ...(transfer ? { transfer } : {}),
        ...(wrap ? { wrap } : {}),
        ...(measured ? { measured } : {}),
        make,
        mirrored,
        ...shaped,
        sides,
        faceEdge: values['face-edge'] ?? located(straightEdge(shaped.shape), heading),
        referenceEnd: values['reference-end'] ?? located('left', heading),
        cuts: withNames(cuts),
        source,
      }
    )
  },
)

/** The three sizes that the reader has counted. */
function sizesOf([length, width, thickness]: readonly WrittenLength[]): PartPlan['measured'] {
  return length && width && thickness && [length, width, thickness]
}

/** The edge to measure from where the plan says none: the bottom, unless that slopes and the top does not. */
function straightEdge(shape: PartPlan['shape']): 'top' | 'bottom' {
  return shape.kind === 'taper' && shape.straight.value === 'top' ? 'top' : 'bottom'
}

/** A part in keys of its own; the maker's words for its sides are taken for the plain ones first. */
export const part: Reader<UnnamedPart> = reader(
  inKeys.description!,
  (node, fail) =>
    readWithin(inKeys, !isLeaf(node) && isMapping(node) ? withPlainSides(node, fail) : node, fail),
  jsonSchemaOf(inKeys),
)
