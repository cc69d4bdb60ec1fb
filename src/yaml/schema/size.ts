import type { LengthFault } from '../../length/fault.ts'
import { readDimensions } from '../../length/read-dimensions.ts'
import { readSize } from '../../length/read-size.ts'
import { type Leaf, placeWithin } from '../document/tree.ts'
import { fault } from '../fault.ts'
import type { WrittenLength } from '../written.ts'
import { leaf } from './leaf.ts'
import type { Fail, Reader } from './reader.ts'

/** One size, or a formula. */
export const size: Reader<WrittenLength> = leaf('a size, such as 2 1/2, or unknown', sizeIn)

export function sizeIn(node: Leaf, fail: Fail): WrittenLength | undefined {
  const read = readSize(node.text)
  const source = placeWithin(node, 0, node.text.length)
  return read.ok ? { size: read.value, source } : void fail(sizeFault(read.fault, node))
}

/** Sizes with an x between them, as many as the words for them. One alone is allowed where 1 is among `counts`. */
export function dimensions(words: string, counts: readonly number[]): Reader<readonly WrittenLength[]> {
  return leaf(words, (node, fail) => dimensionsIn(node, words, counts, fail))
}

export function dimensionsIn(
  node: Leaf,
  words: string,
  counts: readonly number[],
  fail: Fail,
): readonly WrittenLength[] | undefined {
  if (counts.includes(1) && !separator.test(node.text)) {
    const one = sizeIn(node, fail)
    return one && [one]
  }
  const read = readDimensions(node.text)
  if (!read.ok) return void fail(sizeFault(read.fault, node))
  const sizes = read.value.map(({ size, from, to }) => ({ size, source: placeWithin(node, from, to) }))
  if (counts.includes(sizes.length)) return sizes
  const found = `${sizes.length} sizes`
  return void fail(fault('not-a-size', node.source, { found, wanted: words, why: 'dimension-count' }))
}

const separator = /\s[xX×]\s/u

/** A fault of the size reader, at the guilty piece. A piece of no length is shown as the whole size. */
export function sizeFault({ code, from, to, found, wanted, nearest }: LengthFault, node: Leaf) {
  const source = from < to ? placeWithin(node, from, to) : node.source
  const facts = { found, wanted, why: code }
  return fault('not-a-size', source, nearest === undefined ? facts : { ...facts, nearest })
}
