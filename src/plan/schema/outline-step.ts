import type { MappingPlace } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { list } from '../../yaml/schema/collection.ts'
import { choice, flag } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional, type Reader } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import { maxSteps } from '../limits.ts'
import type { OutlineStep, StepShape } from '../plan.ts'
import { angle } from './angle.ts'
import { cornerShape, cornerShapes } from './corners.ts'
import { id } from './id.ts'
import { outlinePoint } from './outline-point.ts'

const keys = {
  to: optional(outlinePoint),
  arc: optional(outlinePoint),
  curve: optional(
    list({ name: 'a list of points', items: 'points of a curve', most: maxSteps }, outlinePoint),
  ),
  radius: optional(size),
  turn: optional(choice('a way to turn', ['left', 'right'])),
  through: optional(outlinePoint),
  bend: optional(angle),
  tangent: optional(flag),
  name: optional(id),
  ...cornerShapes,
  corner: optional(id),
}

type Values = Parameters<Parameters<typeof mapping<typeof keys, OutlineStep>>[2]>[0]

/** One step round an outline: `{ to: [5 1/4, 0], name: foot }`, `{ arc: [0, 2], radius: 9, turn: left }`. */
export const outlineStep: Reader<OutlineStep> = mapping(
  {
    name: 'a step of the outline',
    example: 'to: [5 1/4, 0]',
    json: { anyOf: [{ required: ['to'] }, { required: ['arc'] }, { required: ['curve'] }] },
  },
  keys,
  (values, place, fail) => {
    const { name, corner } = values
    const made = cornerShape(values, place, fail)
    if (corner && !made) {
      const wanted = 'a radius: only a corner that is rounded or chamfered becomes an edge with a name'
      return void fail(
        fault('missing-key', place.keys.get('corner')!, { key: 'round', within: 'this step', wanted }),
      )
    }
    const shape = stepShape(values, place, fail)
    return (
      shape && {
        ...shape,
        ...(name ? { name } : {}),
        ...(made ? { corner: made } : {}),
        ...(corner ? { cornerName: corner } : {}),
        source: place.source,
      }
    )
  },
)

/** The keys by which an arc may be drawn, one of them to each arc. */
const ways = ['radius', 'through', 'bend', 'tangent'] as const

function stepShape(values: Values, place: MappingPlace, fail: Fail): StepShape | undefined {
  const { to, arc, curve } = values
  const kinds = (['to', 'arc', 'curve'] as const).filter(key => place.keys.has(key))
  const [kind, second] = kinds
  if (kind && second) return tooMany(kind, second, place, fail)
  const stray = [...ways, 'turn' as const].find(key => place.keys.has(key))
  if (kind !== 'arc' && stray) {
    const wanted = `only an arc has ${stray}; write arc: with the point it leads to`
    return void fail(fault('wrong-kind', place.keys.get(stray)!, { found: 'a key', text: stray, wanted }))
  }
  if (to) return { kind: 'line', to }
  if (curve) {
    if (curve.length > 0) return { kind: 'curve', points: curve }
    const facts = { key: 'curve', wanted: 'one point at least' }
    return void fail(fault('nothing-in-it', place.keys.get('curve')!, facts))
  }
  if (arc) return arcShape(arc, values, place, fail)
  const wanted = 'the point it leads to: to, arc or curve'
  return void fail(
    fault('missing-key', place.heading, { key: 'to', within: 'a step of the outline', wanted }),
  )
}

function arcShape(
  to: NonNullable<Values['arc']>,
  { radius, turn, through, bend, tangent }: Values,
  place: MappingPlace,
  fail: Fail,
): StepShape | undefined {
  const [way, second] = ways.filter(key => place.keys.has(key))
  if (way && second) return tooMany(way, second, place, fail)
  if (turn && !radius) {
    const wanted = 'a radius; the other ways to draw an arc say themselves which way it turns'
    return void fail(
      fault('missing-key', place.keys.get('turn')!, { key: 'radius', within: 'this arc', wanted }),
    )
  }
  if (radius) {
    if (turn) return { kind: 'arc-by-radius', to, radius, turn }
    const wanted = 'left or right: the way the arc turns as you go along it'
    return void fail(
      fault('missing-key', place.keys.get('radius')!, { key: 'turn', within: 'this arc', wanted }),
    )
  }
  if (through) return { kind: 'arc-through', to, through }
  if (bend) return { kind: 'arc-by-bend', to, bend }
  if (tangent?.value) return { kind: 'arc-tangent', to }
  const wanted = 'how it runs: radius and turn, through, bend, or tangent: true'
  return void fail(fault('missing-key', place.keys.get('arc')!, { key: 'radius', within: 'an arc', wanted }))
}

function tooMany(first: string, second: string, { keys }: MappingPlace, fail: Fail): undefined {
  const both = fault('not-both', keys.get(second)!, { first, second })
  return void fail({ ...both, places: [...both.places, { source: keys.get(first)! }] })
}
