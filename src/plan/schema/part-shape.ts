import type { Source } from '../../finding/source.ts'
import type { MappingPlace } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import type { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional } from '../../yaml/schema/reader.ts'
import { dimensions, size } from '../../yaml/schema/size.ts'
import type { PartSize, ShapePlan, WrittenLength } from '../plan.ts'
import { corners } from './corners.ts'
import { outline, symmetric } from './outline.ts'
import { roundEnds } from './round-ends.ts'
import { taper } from './taper.ts'

/** The keys that say what bounds the face side of a part. */
export const shapeKeys = {
  size: optional(dimensions('length x width x thickness, such as 6 7/8 x 1 5/16 x 7/16', [1, 2, 3])),
  corners: optional(corners),
  ends: optional(roundEnds),
  outline: optional(outline),
  symmetric: optional(symmetric),
  taper: optional(taper),
  round: optional(size),
  inside: optional(size),
  thickness: optional(size),
}

type Values = Parameters<Parameters<typeof mapping<typeof shapeKeys, unknown>>[2]>[0]

/** Which keys stand beside the one that makes a part what it is. */
const companions = {
  size: ['corners', 'ends'],
  outline: ['size', 'symmetric'],
  taper: ['size'],
  round: ['inside'],
} as const

const shaping = ['size', 'corners', 'ends', 'outline', 'symmetric', 'taper', 'round', 'inside'] as const

/** The shape, and the thickness where it stands with the part. */
export function partShape(
  values: Values,
  place: MappingPlace,
  fail: Fail,
): { readonly shape: ShapePlan; readonly thickness?: WrittenLength } | undefined {
  const kind = (['outline', 'taper', 'round', 'size'] as const).find(key => place.keys.has(key))
  if (!kind) {
    const wanted = 'its length x width x thickness; or an outline, or round: with a diameter'
    return void fail(fault('missing-key', place.heading, { key: 'size', within: 'a part', wanted }))
  }
  const allowed: readonly string[] = [kind, ...companions[kind]]
  const stray = shaping.find(key => place.keys.has(key) && !allowed.includes(key))
  if (stray) return void fail(fault('not-both', place.keys.get(stray)!, { first: kind, second: stray }))

  const third = values.size?.[2]
  if (third && values.thickness) {
    const facts = { first: 'a thickness in size', second: 'thickness' }
    return void fail(fault('not-both', place.keys.get('thickness')!, facts))
  }
  const shape = shapes[kind](values, place, fail)
  const thickness = third ?? values.thickness
  return shape && (thickness ? { shape, thickness } : { shape })
}

const shapes: {
  readonly [K in keyof typeof companions]: (
    values: Values,
    place: MappingPlace,
    fail: Fail,
  ) => ShapePlan | undefined
} = {
  size: ({ size, corners = {}, ends = [] }, { keys }, fail) => {
    const sized = partSize(size, keys.get('size')!, fail)
    if (!sized) return undefined
    for (const { value, source } of ends) {
      if (!corners[`top-${value}`] && !corners[`bottom-${value}`]) continue
      return void fail(
        fault('not-both', source, { first: `the corners of the ${value} end`, second: 'ends: round' }),
      )
    }
    return { kind: 'rectangle', size: sized, corners, roundEnds: ends }
  },
  outline: ({ size, outline, symmetric }, { keys }, fail) => {
    const sized = size && partSize(size, keys.get('size')!, fail)
    if (!outline || (size && !sized)) return undefined
    const whole = symmetric ? { ...outline, symmetric } : outline
    return { kind: 'outline', outline: whole, ...(sized ? { size: sized } : {}) }
  },
  taper: ({ size, taper }, { heading }, fail) => {
    if (!taper) return undefined
    const [length, width] = size ?? []
    const wanted = 'its length alone, such as size: 7 1/4; its widths are those of the taper'
    if (!length)
      return void fail(fault('missing-key', heading, { key: 'size', within: 'a tapered part', wanted }))
    if (!width) return { ...taper, length }
    const found = `${size!.length} sizes`
    return void fail(fault('not-a-size', width.source, { found, wanted, why: 'dimension-count' }))
  },
  round: ({ round, inside }, { source }) =>
    round && { kind: 'disc', diameter: round, ...(inside ? { inside } : {}), source },
}

function partSize(
  sizes: readonly WrittenLength[] | undefined,
  key: Source,
  fail: Fail,
): PartSize | undefined {
  const [length, width, thickness] = sizes ?? []
  if (length && width) {
    return { length, width, source: { ...length.source, to: (thickness ?? width).source.to } }
  }
  const wanted = 'length x width x thickness, such as 6 7/8 x 1 5/16 x 7/16'
  return void fail(
    fault('not-a-size', length?.source ?? key, { found: 'one size', wanted, why: 'dimension-count' }),
  )
}
