import type { Source } from '../../finding/source.ts'
import { offsetInRaw } from './scalar-offset.ts'

/**
 * A YAML document as the schema sees it: plain objects and arrays of leaves, with the place of everything beside
 * it. A key of the maker's can be any text, so what marks a leaf or a place is not a key but a symbol.
 */
export type TreeNode = Leaf | Mapping | List
export type Mapping = { readonly [key: string]: TreeNode } & { readonly [placeMark]: MappingPlace }
export type List = readonly TreeNode[] & { readonly [placeMark]: Source }

const leafMark = Symbol('leaf')
const placeMark = Symbol('place')

/** A single value with its text as it was written: `0.10` stays `0.10`, quotes and escapes are undone. */
export type Leaf = {
  readonly [leafMark]: true
  readonly text: string
  /** Nothing was written, or `~` or `null`. */
  readonly empty: boolean
  /** Its fault is known and reported; whoever reads it stays silent. */
  readonly reported: boolean
  readonly source: Source
  /** As it stands in the file, with its quotation marks. */
  readonly raw: string
}

/** Where a mapping stands, and its keys. `heading` names it: its own key, or the first entry of a list's item. */
export type MappingPlace = {
  readonly source: Source
  readonly heading: Source
  readonly keys: ReadonlyMap<string, Source>
}

export function makeLeaf(leaf: Omit<Leaf, typeof leafMark>): Leaf {
  return { [leafMark]: true, ...leaf }
}

/** The place of a piece of a leaf's `text`. */
export function placeWithin({ raw, source }: Leaf, from: number, to: number): Source {
  const start = offsetInRaw(raw, from)
  const end = Math.max(start, offsetInRaw(raw, to))
  return { file: source.file, from: source.from + start, to: source.from + end }
}

/** A piece of a leaf's `text` as a leaf of its own. */
export function pieceOf(leaf: Leaf, from: number, to: number): Leaf {
  const source = placeWithin(leaf, from, to)
  const raw = leaf.raw.slice(source.from - leaf.source.from, source.to - leaf.source.from)
  return { ...leaf, text: leaf.text.slice(from, to), source, raw }
}

/** The entries have no prototype, so that no key of the maker's can mean anything but itself. */
export function makeMapping(entries: Iterable<readonly [string, TreeNode]>, place: MappingPlace): Mapping {
  const mapping: Record<string, TreeNode> = Object.create(null)
  for (const [key, node] of entries) mapping[key] = node
  return Object.assign(mapping, { [placeMark]: place })
}

export function makeList(items: readonly TreeNode[], source: Source): List {
  return Object.assign([...items], { [placeMark]: source })
}

export function isLeaf(node: TreeNode): node is Leaf {
  return leafMark in node
}

export function isList(node: TreeNode): node is List {
  return Array.isArray(node)
}

export function isMapping(node: TreeNode): node is Mapping {
  return !isLeaf(node) && !isList(node)
}

export function placeOf(mapping: Mapping): MappingPlace {
  return mapping[placeMark]
}

export function sourceOf(node: TreeNode): Source {
  if (isLeaf(node)) return node.source
  return isList(node) ? node[placeMark] : node[placeMark].source
}
