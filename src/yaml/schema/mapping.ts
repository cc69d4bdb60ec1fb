import { z } from 'zod'
import { excerpt } from '../../finding/visible.ts'
import { nearestName } from '../../length/nearest-name.ts'
import {
  isLeaf,
  isMapping,
  type Mapping,
  type MappingPlace,
  placeOf,
  type TreeNode,
} from '../document/tree.ts'
import { fault } from '../fault.ts'
import { type JsonSchema, jsonSchemaOf } from './json-schema.ts'
import { wrongKind } from './leaf.ts'
import { type Fail, type Reader, reader, readWithin } from './reader.ts'

type Shape = Readonly<Record<string, z.ZodType>>

/**
 * What a mapping is called in messages, with an example of what is in it, and keys of the plan file that the
 * program does not read yet. `json` says in JSON Schema what the keys alone do not.
 */
export type Naming = {
  readonly name: string
  readonly example: string
  readonly later?: readonly string[]
  readonly json?: JsonSchema
}

/**
 * A group of keys, every one known. `build` makes the plan's value of what the keys hold; it is asked only when
 * all of them are sound.
 */
export function mapping<S extends Shape, T>(
  naming: Naming,
  shape: S,
  build: (values: z.output<z.ZodObject<S>>, place: MappingPlace, fail: Fail) => T | undefined,
): Reader<T> {
  const object = z.object(shape)
  const wanted = `the keys of ${naming.name}, such as ${naming.example}`
  const checkKeys = keyCheck(naming, shape)
  const read = (node: TreeNode, fail: Fail): T | undefined => {
    if (isLeaf(node) && node.reported) return undefined
    if (!isMapping(node)) return void fail(wrongKind(node, wanted))
    const sound = checkKeys(node, fail)
    const values = readWithin(object, node, fail)
    return sound && values ? build(values, placeOf(node), fail) : undefined
  }
  return reader(wanted, read, { ...keysInJson(shape), ...naming.json })
}

function keysInJson(shape: Shape): JsonSchema {
  const properties = Object.fromEntries(Object.entries(shape).map(([key, type]) => [key, jsonSchemaOf(type)]))
  return { type: 'object', properties, required: requiredKeys(shape), additionalProperties: false }
}

function requiredKeys(shape: Shape): readonly string[] {
  return Object.keys(shape).filter(key => !(shape[key] instanceof z.ZodExactOptional))
}

/**
 * Keys that are not known, and keys that are missing. A missing key is not reported beside a wrong one that was
 * probably meant for it, nor beside one of the keys that are not read yet, which may stand in its place.
 */
function keyCheck({ name, later = [] }: Naming, shape: Shape) {
  const known = Object.keys(shape)
  const required = requiredKeys(shape)
  const allowed = known.join(', ')
  return (node: Mapping, fail: Fail): boolean => {
    const place = placeOf(node)
    const excused = new Set<string>()
    let excuseAll = false
    let sound = true
    for (const [key, source] of place.keys) {
      if (known.includes(key)) continue
      sound = false
      const found = excerpt(key)
      if (later.includes(key)) {
        fail(fault('later-key', source, { found, within: name }))
        excuseAll = true
        continue
      }
      const nearest = nearestName(key, known)
      const facts = { found, within: name, allowed }
      fail(fault('unknown-key', source, nearest === undefined ? facts : { ...facts, nearest }))
      if (nearest !== undefined) excused.add(nearest)
    }
    for (const key of required) {
      if (place.keys.has(key)) continue
      sound = false
      if (excuseAll || excused.has(key)) continue
      const wanted = shape[key]!.description ?? ''
      fail(fault('missing-key', place.heading, { key, within: name, wanted }))
    }
    return sound
  }
}
