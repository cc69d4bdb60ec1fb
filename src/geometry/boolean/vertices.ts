import { int32Array, type Memory } from './memory.ts'

/**
 * Vertices that were found to be one. Every group is known by its lowest number, so that a point of the input
 * stands for the crossings near it and the result does not depend on the order of the search.
 */
export type Groups = { parent: Int32Array }

export function createGroups(memory: Memory, count: number): Groups {
  const parent = int32Array(memory, count)
  for (let i = 0; i < count; i++) parent[i] = i
  return { parent }
}

export function groupOf(groups: Groups, v: number): number {
  const { parent } = groups
  let at = v
  while (parent[at] !== at) {
    const up = parent[parent[at]!]!
    parent[at] = up
    at = up
  }
  return at
}

/** @returns whether the two were apart until now */
export function join(groups: Groups, a: number, b: number): boolean {
  const p = groupOf(groups, a)
  const q = groupOf(groups, b)
  if (p === q) return false
  if (p < q) groups.parent[q] = p
  else groups.parent[p] = q
  return true
}
