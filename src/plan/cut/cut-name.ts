import { isLeaf, isMapping, type Leaf, type TreeNode } from '../../yaml/document/tree.ts'
import { cutKinds } from './cut-kinds.ts'

const kinds = Object.keys(cutKinds)

/** The name of a cut as it stands, whatever else is wrong with it. */
export function cutName(node: TreeNode): Leaf | undefined {
  if (!isMapping(node)) return undefined
  const name = kinds.map(kind => node[kind]).find(value => value !== undefined)
  return name && isLeaf(name) && !name.empty ? name : undefined
}
