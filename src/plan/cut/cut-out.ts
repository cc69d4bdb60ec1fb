import type { MappingPlace } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional, type Reader } from '../../yaml/schema/reader.ts'
import { dimensions, size } from '../../yaml/schema/size.ts'
import type { CutOutPlan, EntryPlan } from '../plan.ts'
import { corners } from '../schema/corners.ts'
import { cutId } from '../schema/cut-id.ts'
import { outline, symmetric } from '../schema/outline.ts'
import { fromSides, position, type WrittenPosition } from '../schema/position.ts'
import { type CutReaders, inWords, onFaceKeys } from './cut-kind.ts'
import { onFace } from './on-face.ts'

/** Where the blade goes in, and how wide the hole for it is; either may be left to the program. */
const entry: Reader<{ at?: WrittenPosition; place: MappingPlace; bit?: EntryPlan['bit'] & {} }> = mapping(
  { name: 'an entry hole', example: 'bit: 1/4' },
  { at: optional(position), bit: optional(size) },
  ({ at, bit }, place) => ({ ...(at ? { at } : {}), ...(bit ? { bit } : {}), place }),
)

const keys = {
  'cut-out': cutId,
  ...onFaceKeys,
  size: optional(dimensions('along x across, such as 2 x 1 1/4', [2])),
  corners: optional(corners),
  round: optional(size),
  outline: optional(outline),
  symmetric: optional(symmetric),
  entry: optional(entry),
}

type Values = Parameters<Parameters<typeof mapping<typeof keys, CutOutPlan>>[2]>[0]

export const cutOut: CutReaders['cut-out'] = mapping(
  {
    name: 'a cut-out',
    example: 'size: 2 x 1 1/4',
    json: { anyOf: [{ required: ['size'] }, { required: ['round'] }, { required: ['outline'] }] },
  },
  keys,
  (values, place, fail) => {
    const { 'cut-out': id, at, on, entry } = values
    const { source } = place
    const shape = cutOutShape(values, place, fail)
    const placed = onFace(on, at, id, source, fail)
    if (!shape || !placed) return undefined
    const enters = entry && entryPlan(entry, placed.on[0].value, fail)
    if (entry && !enters) return undefined
    return {
      kind: 'cut-out',
      id,
      ...placed,
      shape,
      ...(enters ? { entry: enters } : {}),
      ...inWords(values),
      source,
    }
  },
)

function entryPlan(
  { at, bit, place }: NonNullable<Values['entry']>,
  face: CutOutPlan['on'][0]['value'],
  fail: Fail,
): EntryPlan | undefined {
  const sized = bit ? { bit } : {}
  if (!at) return { ...sized, source: place.source }
  if (at.from || at.concentric) {
    const wanted = 'distances from two sides, such as { left: 2, bottom: 1 }'
    return void fail(fault('wrong-kind', at.source, { found: 'another place', wanted }))
  }
  const sides = fromSides(at, face, place.source, fail)
  return sides && { at: sides, ...sized, source: place.source }
}

function cutOutShape(
  { at, size, corners = {}, round, outline, symmetric }: Values,
  { keys, heading }: MappingPlace,
  fail: Fail,
): CutOutPlan['shape'] | undefined {
  const [kind, second] = (['size', 'round', 'outline'] as const).filter(key => keys.has(key))
  if (kind && second) return void fail(fault('not-both', keys.get(second)!, { first: kind, second }))
  const stray = kind === 'size' ? 'symmetric' : kind === 'outline' ? 'corners' : undefined
  for (const key of stray ? [stray] : (['symmetric', 'corners'] as const)) {
    if (kind && keys.has(key)) {
      return void fail(fault('not-both', keys.get(key)!, { first: kind, second: key }))
    }
  }
  if (size) {
    const [along, across] = size
    return along && across && { kind: 'rectangle', along, across, corners }
  }
  if (round) return { kind: 'disc', diameter: round }
  if (outline) {
    const whole = symmetric ? { ...outline, symmetric } : outline
    return { kind: 'outline', outline: whole, placed: at === undefined }
  }
  const wanted = 'its size along x across; or round: with a diameter, or an outline'
  return void fail(fault('missing-key', heading, { key: 'size', within: 'a cut-out', wanted }))
}
