import type { Node, Pair, Scalar, YAMLMap, YAMLSeq } from 'yaml'
import { type Alias, type Document, isAlias, isMap, isScalar, isSeq } from 'yaml'
import type { Finding } from '../../finding/finding.ts'
import type { Source } from '../../finding/source.ts'
import { excerpt } from '../../finding/visible.ts'
import { fault, limitPassed } from '../fault.ts'
import { maxAliases, maxFindings, maxNesting, maxValues } from '../limits.ts'
import { colonWithoutSpace } from './colon-without-space.ts'
import { type Leaf, makeLeaf, makeList, makeMapping, type TreeNode } from './tree.ts'
import { commentInText, emptyValueTrap, type Key } from './value-traps.ts'

/** Without a root the document is empty, or a limit was passed and the findings say so. */
export type BuiltTree = { readonly root?: TreeNode; readonly findings: readonly Finding[] }

/**
 * The document as plain objects. Aliases are written out here, with a budget, and not by the YAML library, so a
 * file of aliases of aliases costs no more than its budget.
 */
export function buildTree(document: Document.Parsed, text: string, file: string): BuiltTree {
  const root: Node | null = document.contents
  if (root === null || (isScalar(root) && root.source === '')) return { findings: [] }
  const findings: Finding[] = []
  const walk: Walk = {
    text,
    file,
    report: finding => {
      if (findings.length <= maxFindings) findings.push(finding)
    },
    anchors: new Map(),
    open: new Set(),
    values: 0,
    aliases: 0,
    spent: false,
  }
  const tree = nodeOf(root, { walk, depth: 0 })
  return walk.spent ? { findings } : { root: tree, findings }
}

type Walk = {
  readonly text: string
  readonly file: string
  readonly report: (finding: Finding) => void
  readonly anchors: Map<string, Node>
  /** The collections that are being written out. */
  readonly open: Set<Node>
  values: number
  aliases: number
  /** A limit was passed: nothing more is looked at. */
  spent: boolean
}

/** How the walk came to a node: how deep, through which key. */
type Way = { readonly walk: Walk; readonly depth: number; readonly key?: Key }

function nodeOf(node: Node | null, way: Way): TreeNode {
  const { walk, depth } = way
  const source = node ? sourceIn(walk, node) : (way.key?.source ?? { file: walk.file, from: 0, to: 0 })
  walk.values += 1
  if (walk.values > maxValues)
    return stop(way, source, 'values with every alias written out', walk.values, maxValues)
  if (depth > maxNesting) return stop(way, source, 'levels of nesting', depth, maxNesting)
  if (walk.spent || node === null) return emptyLeaf(way, source)
  if (isAlias(node)) return aliasOf(node, way, source)
  if (node.anchor !== undefined) walk.anchors.set(node.anchor, node)
  if (node.tag !== undefined) {
    walk.report(fault('tag-refused', source, { tag: excerpt(node.tag) }))
    return silentLeaf(source)
  }
  if (isScalar(node)) return leafOf(node, way, source)
  walk.open.add(node)
  const built = isMap(node)
    ? mappingOf(node, way, source)
    : isSeq(node)
      ? listOf(node, way, source)
      : silentLeaf(source)
  walk.open.delete(node)
  return built
}

/** The place of a node, without the line end that YAML counts to a block. */
function sourceIn({ text, file }: Walk, node: Node): Source {
  const [from, end] = node.range ?? [0, 0]
  let to = end
  if (!isScalar(node)) while (to > from && /\s/.test(text.charAt(to - 1))) to -= 1
  return { file, from, to }
}

function stop(way: Way, source: Source, of: string, measured: number, limit: number): Leaf {
  if (!way.walk.spent) way.walk.report(limitPassed(source, of, measured, limit))
  way.walk.spent = true
  return silentLeaf(source)
}

function aliasOf(alias: Alias, way: Way, source: Source): TreeNode {
  const { walk } = way
  walk.aliases += 1
  if (walk.aliases > maxAliases) return stop(way, source, 'aliases', walk.aliases, maxAliases)
  const target = walk.anchors.get(alias.source)
  const name = excerpt(alias.source)
  if (target && !walk.open.has(target)) return nodeOf(target, { ...way, depth: way.depth + 1 })
  walk.report(target ? fault('alias-loop', source, { name }) : fault('alias-unknown', source, { name }))
  return silentLeaf(source)
}

function listOf(list: YAMLSeq, { walk, depth }: Way, source: Source): TreeNode {
  const items: TreeNode[] = []
  for (const item of list.items) {
    if (walk.spent) break
    items.push(nodeOf(item as Node | null, { walk, depth: depth + 1 }))
  }
  return makeList(items, source)
}

function mappingOf(map: YAMLMap, way: Way, source: Source): TreeNode {
  const { walk, depth } = way
  const entries = new Map<string, TreeNode>()
  const keys = new Map<string, Source>()
  let heading = way.key?.source
  let before = ''
  for (const pair of map.items as Pair<Node | null, Node | null>[]) {
    if (walk.spent) break
    const key = keyOf(pair, walk, source)
    if (!key) continue
    const first = keys.get(key.text)
    if (first) {
      const twice = fault('duplicate-key', key.source, { key: excerpt(key.text) })
      walk.report({ ...twice, places: [...twice.places, { source: first }] })
      continue
    }
    heading ??= {
      ...key.source,
      to: pair.value?.range && isScalar(pair.value) ? pair.value.range[1] : key.source.to,
    }
    const trapped = map.flow && pair.value === null ? withoutValue(key, before, walk) : undefined
    if (trapped !== 'no entry') {
      const { text, source: place } = trapped?.key ?? key
      keys.set(text, place)
      entries.set(text, trapped ? trapped.value : nodeOf(pair.value, { walk, depth: depth + 1, key }))
    }
    before = key.text
  }
  return makeMapping(entries, { source, heading: heading ?? source, keys })
}

/** The key of an entry, where it is a plain word; else a fault, and the entry is left out. */
function keyOf(pair: Pair<Node | null, Node | null>, walk: Walk, within: Source): Key | undefined {
  const { key } = pair
  const source = key ? sourceIn(walk, key) : within
  if (!isScalar(key) || key.tag !== undefined || key.source === undefined || textOf(key) === '') {
    walk.report(fault('key-not-text', source, { found: excerpt(walk.text.slice(source.from, source.to)) }))
    return undefined
  }
  if (textOf(key) === '<<' && key.type === 'PLAIN') {
    walk.report(fault('merge-key', source, {}))
    return undefined
  }
  return { text: textOf(key), source }
}

/**
 * An entry of `{ }` with no colon: `bottom:5/8`, whose key and value ran together, or what stands behind a comma
 * that was meant as part of a text.
 */
function withoutValue(
  key: Key,
  before: string,
  walk: Walk,
): { key: Key; value: Leaf } | 'no entry' | undefined {
  const together = colonWithoutSpace(key.text)
  if (together) {
    const facts = { key: excerpt(together.key), value: excerpt(together.value) }
    walk.report(fault('colon-without-space', key.source, facts))
    return { key: { text: together.key, source: key.source }, value: silentLeaf(key.source) }
  }
  if (before === '') return undefined
  walk.report(fault('comma-in-braces', key.source, { found: excerpt(key.text), before: excerpt(before) }))
  return 'no entry'
}

function textOf(scalar: Scalar): string {
  return scalar.type === 'PLAIN' ? (scalar.source ?? '') : String(scalar.value)
}

function leafOf(scalar: Scalar, way: Way, source: Source): Leaf {
  const { walk, key } = way
  const raw = walk.text.slice(source.from, source.to)
  const empty = scalar.type === 'PLAIN' && scalar.value === null
  const trap = empty && key ? emptyValueTrap(key, raw, source, walk.text) : undefined
  const comment = empty ? undefined : commentInText(source, walk.text)
  if (trap) walk.report(trap)
  if (comment) walk.report(comment)
  return makeLeaf({
    text: textOf(scalar),
    empty,
    reported: trap !== undefined,
    source: raw === '' && key ? key.source : source,
    raw,
  })
}

function emptyLeaf(way: Way, source: Source): Leaf {
  return makeLeaf({ text: '', empty: true, reported: way.walk.spent, source, raw: '' })
}

function silentLeaf(source: Source): Leaf {
  return makeLeaf({ text: '', empty: true, reported: true, source, raw: '' })
}
