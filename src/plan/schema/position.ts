import { type Side, sides } from '../../finding/side.ts'
import type { Source } from '../../finding/source.ts'
import { type Direction, faceDirections } from '../face-directions.ts'
import { fault } from '../fault.ts'
import type { DistancePlan, Located, PositionPlan } from '../plan.ts'
import { either } from './either.ts'
import { leaf, wrongKind } from './leaf.ts'
import { mapping } from './mapping.ts'
import { type Fail, optional, type Reader } from './reader.ts'
import { sizeIn } from './size.ts'

/** `at` as it stands, before it is known which face it lies on. */
export type WrittenPosition = {
  readonly centre: boolean
  readonly distances: readonly WrittenDistance[]
  readonly source: Source
}

type WrittenDistance = { readonly side: Located<Side>; readonly size: DistanceSize }
type DistanceSize =
  | Omit<Extract<DistancePlan, { kind: 'from-side' }>, 'side'>
  | Extract<DistancePlan, { kind: 'centre' }>

const isCentre = (text: string) => text === 'center' || text === 'centre'

const distance: Reader<DistanceSize> = leaf('a distance, such as 3/8, or center', (node, fail) => {
  if (isCentre(node.text)) return { kind: 'centre', source: node.source }
  const length = sizeIn(node, fail)
  return length && { kind: 'from-side', length }
})

const bothCentred: Reader<WrittenPosition> = leaf('center', (node, fail) =>
  isCentre(node.text)
    ? { centre: true, distances: [], source: node.source }
    : void fail(wrongKind(node, 'distances such as { left: 3/8, bottom: 1/2 }, or center')),
)

const distances: Reader<WrittenPosition> = mapping(
  { name: 'a position', example: 'left: 3/8', later: ['start', 'end', 'from', 'concentric'] },
  {
    front: optional(distance),
    back: optional(distance),
    left: optional(distance),
    right: optional(distance),
    top: optional(distance),
    bottom: optional(distance),
  },
  (values, { keys, source }) => {
    const given = sides.flatMap(side => {
      const size = values[side]
      return size ? [{ side: { value: side, source: keys.get(side)! }, size }] : []
    })
    return { centre: false, distances: given, source }
  },
)

export const position: Reader<WrittenPosition> = either(bothCentred, distances)

/**
 * The position on its face. Faults: a distance from a side that the face does not run to, and two distances in
 * one direction. `directions` are those that count; a notch has only the one along its edge.
 */
export function placeOnFace(
  written: WrittenPosition | undefined,
  on: Side,
  cut: Source,
  fail: Fail,
  directions: readonly ('along' | 'across')[] = ['along', 'across'],
): PositionPlan | undefined {
  if (!written) return { source: cut }
  const { source } = written
  const wanted = directions.map(direction => faceDirections[on][direction])
  let sound = true
  for (const { side } of written.distances) {
    if (wanted.some(direction => direction.includes(side.value))) continue
    sound = false
    const allowed = wanted.map(([zero, far]) => `${zero} or ${far}`).join(', and ')
    fail(fault('side-off-face', side.source, { found: side.value, on, allowed }))
  }
  const found: { along?: DistancePlan; across?: DistancePlan } = {}
  for (const direction of directions) {
    const chosen = inDirection(written, faceDirections[on][direction], fail)
    if (chosen === 'two') sound = false
    else if (chosen) found[direction] = chosen
  }
  return sound ? { ...found, source } : undefined
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
