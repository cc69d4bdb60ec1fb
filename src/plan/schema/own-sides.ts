import { isSide } from '../../finding/face-name.ts'
import { type Side, sides } from '../../finding/side.ts'
import type { Source } from '../../finding/source.ts'
import {
  isLeaf,
  isList,
  isMapping,
  type Leaf,
  type Mapping,
  makeLeaf,
  makeList,
  makeMapping,
  placeOf,
  sourceOf,
  type TreeNode,
} from '../../yaml/document/tree.ts'
import { fault } from '../../yaml/fault.ts'
import { mapping } from '../../yaml/schema/mapping.ts'
import { type Fail, optional, type Reader, readWithin } from '../../yaml/schema/reader.ts'
import type { Located, PartPlan } from '../plan.ts'
import { id } from './id.ts'

/** What may stand beside a side in a position, and so cannot be another word for one. */
const taken = ['start', 'end', 'from', 'concentric', 'center', 'centre', 'neither']

const ownWord = optional(id)

/** `{ front: deck, left: nose }` */
export const ownSides: Reader<PartPlan['sides']> = mapping(
  { name: 'the sides', example: 'front: deck' },
  { front: ownWord, back: ownWord, left: ownWord, right: ownWord, top: ownWord, bottom: ownWord },
  (words, _, fail) => {
    const first = new Map<string, Located<string>>()
    let sound = true
    for (const word of Object.values(words)) {
      if (!word) continue
      const before = first.get(word.value)
      if (before) {
        const twice = fault('side-twice', word.source, { side: word.value })
        fail({ ...twice, places: [...twice.places, { source: before.source }] })
        sound = false
      } else if (isSide(word.value) || taken.includes(word.value)) {
        fail(fault('reserved-name', word.source, { name: word.value, means: 'something else in a position' }))
        sound = false
      } else first.set(word.value, word)
    }
    return sound ? words : undefined
  },
)

/**
 * The part with the maker's own words for sides put back into the plain ones, wherever a side is named: then
 * everything behind it knows six sides and no more. Places stay those of the words as they were written.
 */
export function withPlainSides(part: Mapping, fail: Fail): Mapping {
  const { sides: written, cuts } = part
  // what is wrong with the words is reported by the reader of the part
  const words = written && readWithin(ownSides, written, () => {})
  if (!words || !cuts || !isList(cuts)) return part
  const sideOf = new Map<string, Side>()
  for (const side of sides) {
    const word = words[side]?.value
    if (word !== undefined) sideOf.set(word, side)
  }
  const plain = makeList(
    cuts.map(cut => (isMapping(cut) ? plainCut(cut, sideOf, fail) : cut)),
    sourceOf(cuts),
  )
  return replaced(part, { cuts: plain })
}

function plainCut(cut: Mapping, sideOf: ReadonlyMap<string, Side>, fail: Fail): Mapping {
  const { at, last, stopped, entry, on, toward, edge, edges, short, lean } = cut
  const positions = { at, last, stopped }
  const changes: Record<string, TreeNode> = {}
  for (const [key, node] of Object.entries(positions)) {
    if (node && isMapping(node)) changes[key] = plainKeys(node, sideOf, fail)
  }
  if (entry && isMapping(entry) && entry.at && isMapping(entry.at)) {
    changes.entry = replaced(entry, { at: plainKeys(entry.at, sideOf, fail) })
  }
  if (lean) changes.lean = plainLeans(lean, sideOf)
  for (const [key, node] of Object.entries({ on, toward, edge, edges, short })) {
    if (node) changes[key] = plainWords(node, sideOf)
  }
  return replaced(cut, changes)
}

/** The side that a lean, or each of two, is toward. */
function plainLeans(node: TreeNode, sideOf: ReadonlyMap<string, Side>): TreeNode {
  if (isLeaf(node)) return node
  if (isList(node))
    return makeList(
      node.map(item => plainLeans(item, sideOf)),
      sourceOf(node),
    )
  return node.toward ? replaced(node, { toward: plainWords(node.toward, sideOf) }) : node
}

function plainWords(node: TreeNode, sideOf: ReadonlyMap<string, Side>): TreeNode {
  if (isList(node))
    return makeList(
      node.map(item => plainWords(item, sideOf)),
      sourceOf(node),
    )
  return isLeaf(node) ? plainWord(node, sideOf) : node
}

function plainWord(leaf: Leaf, sideOf: ReadonlyMap<string, Side>): Leaf {
  const side = sideOf.get(leaf.text)
  return side === undefined ? leaf : makeLeaf({ ...leaf, text: side })
}

function plainKeys(position: Mapping, sideOf: ReadonlyMap<string, Side>, fail: Fail): Mapping {
  const place = placeOf(position)
  const keys = new Map<string, Source>()
  const entries: [string, TreeNode][] = []
  for (const [key, source] of place.keys) {
    const name = sideOf.get(key) ?? key
    if (keys.has(name)) {
      fail(fault('not-both', source, { first: name, second: key }))
      continue
    }
    keys.set(name, source)
    entries.push([name, position[key]!])
  }
  return makeMapping(entries, { ...place, keys })
}

function replaced(mapping: Mapping, changes: Readonly<Record<string, TreeNode>>): Mapping {
  const place = placeOf(mapping)
  return makeMapping(
    [...place.keys.keys()].map((key): [string, TreeNode] => [key, changes[key] ?? mapping[key]!]),
    place,
  )
}
