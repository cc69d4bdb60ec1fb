import type { Item } from '../../../src/paper/pack/item.ts'

/**
 * Templates of a model as they may be: many small parts and a few large ones, one to four pieces of each, their keys
 * with them. Millimetres.
 */
export function randomPacket(random: () => number, parts: number): readonly Item[] {
  const between = (least: number, most: number, share: number): number => least + share * (most - least)
  return Array.from({ length: parts }, (_, part) => {
    // small ones are more frequent
    const width = between(20, 180, random() * random())
    const height = between(15, 135, random() * random())
    const pieces = 1 + Math.floor(random() * 4)
    return Array.from({ length: pieces }, () => ({ group: `part-${part}`, shapes: [{ width, height }] }))
  }).flat()
}
