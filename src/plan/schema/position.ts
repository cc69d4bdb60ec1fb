import { type DistanceFrom, type FaceName, sayFace } from '../../finding/face-name.ts'
import { sides } from '../../finding/side.ts'
import type { Source } from '../../finding/source.ts'
import type { MappingPlace } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { either } from '../../yaml/schema/either.ts'
import { jsonSchemaOf } from '../../yaml/schema/json-schema.ts'
import { leaf, wrongKind } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional, type Reader } from '../../yaml/schema/reader.ts'
import { sizeIn } from '../../yaml/schema/size.ts'
import { type Direction, faceDirections } from '../face-directions.ts'
import type { DistancePlan, FromSides, Located, PositionPlan } from '../plan.ts'
import { cutReference } from './cut-reference.ts'
import { id } from './id.ts'

/** `at` as it stands, before it is known which face it lies on. */
export type WrittenPosition = {
  readonly centre: boolean
  readonly distances: readonly WrittenDistance[]
  readonly from?: Located<string>
  readonly concentric?: Located<string>
  readonly source: Source
}

type WrittenDistance = { readonly side: Located<DistanceFrom>; readonly size: DistanceSize }
type DistanceSize =
  | Omit<Extract<DistancePlan, { kind: 'from-side' }>, 'side'>
  | Extract<DistancePlan, { kind: 'centre' }>

const isCentre = (text: string) => text === 'center' || text === 'centre'

export const distance: Reader<DistanceSize> = leaf('a distance, such as 3/8, or center', (node, fail) => {
  if (isCentre(node.text)) return { kind: 'centre', source: node.source }
  const length = sizeIn(node, fail)
  return length && { kind: 'from-side', length }
})

const bothCentred: Reader<WrittenPosition> = leaf('center', (node, fail) =>
  isCentre(node.text)
    ? { centre: true, distances: [], source: node.source }
    : void fail(wrongKind(node, 'distances such as { left: 3/8, bottom: 1/2 }, or center')),
)

export const distanceKeys = {
  front: optional(distance),
  back: optional(distance),
  left: optional(distance),
  right: optional(distance),
  top: optional(distance),
  bottom: optional(distance),
  start: optional(distance),
  end: optional(distance),
}

/** Where a plan has words of its own for sides, they stand as keys, and no schema knows them. */
const ownWords = { additionalProperties: jsonSchemaOf(distance) }

const distances: Reader<WrittenPosition> = mapping(
  { name: 'a position', example: 'left: 3/8', json: ownWords },
  { ...distanceKeys, from: optional(cutReference), concentric: optional(id) },
  ({ from, concentric, ...values }, place, fail) => {
    const sided = positionOf(values, place)
    const other = from ? 'from' : sided.distances[0]?.side.value
    if (concentric && other) {
      return void fail(fault('not-both', place.keys.get(other)!, { first: 'concentric', second: other }))
    }
    return { ...sided, ...(from ? { from } : {}), ...(concentric ? { concentric } : {}) }
  },
)

/** The distances among the values of a mapping. */
export function positionOf(
  values: { readonly [S in DistanceFrom]?: DistanceSize },
  { keys, source }: Pick<MappingPlace, 'keys' | 'source'>,
): WrittenPosition {
  const distances = distanceNames.flatMap(side => {
    const size = values[side]
    return size ? [{ side: { value: side, source: keys.get(side)! }, size }] : []
  })
  return { centre: false, distances, source }
}

const distanceNames: readonly DistanceFrom[] = [...sides, 'start', 'end']

export const position: Reader<WrittenPosition> = either(bothCentred, distances)

/** Which of a face's directions a position has to give; a notch has only the one along its edge. */
type Directions = readonly ('along' | 'across')[]

/**
 * The position on its face. Faults: a distance from a side that the face does not run to, and two distances in
 * one direction.
 */
export function placeOnFace(
  written: WrittenPosition | undefined,
  on: FaceName,
  cut: Source,
  fail: Fail,
): PositionPlan | undefined {
  const { from, concentric, source } = written ?? {}
  if (concentric && source) return { kind: 'concentric', with: concentric, source }
  const sided = fromSides(written, on, cut, fail)
  if (!sided || !from) return sided
  const { along, across } = sided
  for (const distance of [along, across]) {
    if (distance?.kind !== 'centre') continue
    const wanted = 'a distance from the cut named, such as 1 1/2; level with it, the direction is left out'
    return void fail(fault('wrong-kind', distance.source, { found: 'center', wanted }))
  }
  return {
    kind: 'from-feature',
    feature: from,
    ...(along?.kind === 'from-side' ? { along: { toward: along.side, length: along.length } } : {}),
    ...(across?.kind === 'from-side' ? { across: { toward: across.side, length: across.length } } : {}),
    source: sided.source,
  }
}

/** A position that has distances from the sides alone. */
export function fromSides(
  written: WrittenPosition | undefined,
  on: FaceName,
  cut: Source,
  fail: Fail,
  directions: Directions = ['along', 'across'],
): FromSides | undefined {
  if (!written) return { kind: 'from-sides', source: cut }
  const { source } = written
  const faceRuns = faceDirections(on)
  const wanted = directions.map(direction => faceRuns[direction])
  let sound = true
  for (const { side } of written.distances) {
    if (wanted.some(direction => direction.includes(side.value))) continue
    sound = false
    const allowed = wanted.map(([zero, far]) => `${zero} or ${far}`).join(', and ')
    fail(fault('side-off-face', side.source, { found: side.value, on: sayFace(on), allowed }))
  }
  const found: { along?: DistancePlan; across?: DistancePlan } = {}
  for (const direction of directions) {
    const chosen = inDirection(written, faceRuns[direction], fail)
    if (chosen === 'two') sound = false
    else if (chosen) found[direction] = chosen
  }
  return sound ? { kind: 'from-sides', ...found, source } : undefined
}

function inDirection(
  written: WrittenPosition,
  direction: Direction,
  fail: Fail,
): DistancePlan | 'two' | undefined {
  if (written.centre) return { kind: 'centre', source: written.source }
  const [first, second] = written.distances.filter(({ side }) => direction.includes(side.value))
  if (first && second) {
    const facts = { first: first.side.value, second: second.side.value }
    const both = fault('not-both', second.side.source, facts)
    fail({ ...both, places: [...both.places, { source: first.side.source }] })
    return 'two'
  }
  if (!first) return undefined
  return first.size.kind === 'centre' ? first.size : { ...first.size, side: first.side.value }
}
