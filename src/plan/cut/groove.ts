import { type DistanceFrom, type FaceName, sayFace } from '../../finding/face-name.ts'
import type { MappingPlace } from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { choice, located } from '../../yaml/schema/leaf.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional } from '../../yaml/schema/reader.ts'
import { size } from '../../yaml/schema/size.ts'
import { type Direction, faceDirections } from '../face-directions.ts'
import type { GroovePlan } from '../plan.ts'
import { cutId } from '../schema/cut-id.ts'
import type { Faces } from '../schema/face.ts'
import { fromSides } from '../schema/position.ts'
import { type CutReaders, inWords, onFaceKeys } from './cut-kind.ts'
import { runKeys, runOf } from './stops.ts'

const name = 'a groove'
const ways = ['length', 'width', 'thickness'] as const

const keys = {
  groove: cutId,
  ...onFaceKeys,
  along: optional(choice('a direction', ways)),
  width: size,
  depth: size,
  ...runKeys,
}

type Values = Parameters<Parameters<typeof mapping<typeof keys, GroovePlan>>[2]>[0]

export const groove: CutReaders['groove'] = mapping(
  { name, example: 'width: 1/8' },
  keys,
  (values, place, fail) => {
    const { groove, width, depth } = values
    const on: Faces = values.on ?? [located('front', groove.source)]
    const runs = runsOf(values, on[0].value, place, fail)
    if (!runs) return undefined
    const across = runs === 'along' ? 'across' : 'along'
    const position = fromSides(values.at, on[0].value, place.source, fail, [across])
    const run = runOf(values, faceDirections(on[0].value)[runs], place.keys, fail)
    if (!position || !run) return undefined
    const at = position[across]
    return {
      kind: 'groove',
      id: groove,
      on,
      runs,
      ...(at ? { at } : {}),
      width,
      depth,
      ...run,
      ...inWords(values),
      source: place.source,
    }
  },
)

/** As `along` says, or where that is left out along the side that its place is measured from. */
function runsOf(
  { at, along }: Values,
  face: FaceName,
  { heading }: MappingPlace,
  fail: Fail,
): GroovePlan['runs'] | undefined {
  const directions = faceDirections(face)
  const offered = { along: wayOf(directions.along), across: wayOf(directions.across) }
  if (at?.from || at?.concentric) {
    const wanted = 'a distance from a side that the groove runs beside, such as { bottom: 3/8 }'
    return void fail(fault('wrong-kind', at.source, { found: 'another place', wanted }))
  }
  if (along) {
    if (along.value === offered.along) return 'along'
    if (along.value === offered.across) return 'across'
    const facts = {
      found: along.value,
      of: `a direction on the ${sayFace(face)}`,
      allowed: `${offered.along}, ${offered.across}`,
    }
    return void fail(fault('not-a-choice', along.source, facts))
  }
  const given = at?.distances ?? []
  const measured = (direction: Direction) => given.some(({ side }) => direction.includes(side.value))
  const [byAlong, byAcross] = [measured(directions.along), measured(directions.across)]
  if (byAlong && byAcross) {
    const wanted = 'one distance, from a side that the groove runs beside; where it stops, stopped: says'
    return void fail(fault('wrong-kind', at!.source, { found: 'a second distance', wanted }))
  }
  if (byAcross) return 'along'
  if (byAlong) return 'across'
  const strange = given[0]?.side
  if (strange) {
    const allowed = [...directions.along, ...directions.across].join(' or ')
    return void fail(
      fault('side-off-face', strange.source, { found: strange.value, on: sayFace(face), allowed }),
    )
  }
  const wanted = `the direction that it runs in, ${offered.along} or ${offered.across}`
  return void fail(fault('missing-key', heading, { key: 'along', within: name, wanted }))
}

/** What a maker calls the direction between two sides of a face. */
function wayOf([near]: readonly [DistanceFrom, DistanceFrom]): (typeof ways)[number] {
  if (near === 'front') return 'thickness'
  return near === 'bottom' ? 'width' : 'length'
}
