import type { Finding } from '../../finding/finding.ts'
import { readSize } from '../../length/read-size.ts'
import { type Leaf, pieceOf } from '../../yaml/document/tree.ts'
import { leaf, located } from '../../yaml/schema/leaf.ts'
import type { Fail, Reader } from '../../yaml/schema/reader.ts'
import { dimensionsIn, sizeFault } from '../../yaml/schema/size.ts'
import type { Located, PartPlan, WrittenLength } from '../plan.ts'
import type { UnnamedPart } from './part.ts'

/**
 * A part in one line: `7 1/4 x 1 3/8 x plank`, length x width x the stock it is cut from or its thickness. Which of
 * the two the last word is, only the whole plan can say.
 */
export type ShortPart = {
  readonly part: UnnamedPart
  readonly last:
    | {
        /** The word as the name of a stock. */
        readonly stock: Located<string>
        /** The word as a size, or why it is none. */
        readonly thickness: WrittenLength | { readonly fault: Finding }
      }
    | undefined
}

const words = 'length x width x stock or thickness, such as 7 1/4 x 1 3/8 x plank'

const lastWord = /^(.*\s[xX×])\s+([a-z][a-z0-9-]*)\s*$/su

export const shortPart: Reader<ShortPart> = leaf(words, (node, fail) => {
  const [, before, word] = lastWord.exec(node.text) ?? []
  if (before === undefined || word === undefined) {
    const [length, width, thickness] = dimensionsIn(node, words, [3], fail) ?? []
    return length && width && thickness && { part: inFull(node, length, width, thickness), last: undefined }
  }
  const face = pieceOf(node, 0, before.length - 1)
  const [length, width] = dimensionsIn(face, words, [2], fail) ?? []
  if (!length || !width) return undefined
  const from = node.text.lastIndexOf(word)
  const last = pieceOf(node, from, from + word.length)
  const read = readSize(word)
  const thickness = read.ok
    ? { size: read.value, source: last.source }
    : { fault: sizeFault(read.fault, last) }
  return { part: inFull(node, length, width), last: { stock: located(word, last.source), thickness } }
})

function inFull(
  node: Leaf,
  length: WrittenLength,
  width: WrittenLength,
  thickness?: WrittenLength,
): UnnamedPart {
  const { source } = node
  return {
    make: located(1, source),
    mirrored: false,
    shape: {
      kind: 'rectangle',
      size: { length, width, source: { ...length.source, to: (thickness ?? width).source.to } },
      corners: {},
      roundEnds: [],
    },
    ...(thickness ? { thickness } : {}),
    sides: {},
    faceEdge: located('bottom', source),
    referenceEnd: located('left', source),
    cuts: [],
    source,
  }
}

/** The part as the long form would have it: `from: plank` where the last word is a stock, else a thickness. */
export function resolved(
  { part, last }: ShortPart,
  isStock: (name: string) => boolean,
  fail: Fail,
): Omit<PartPlan, 'id'> | undefined {
  if (last === undefined) return part
  const { stock, thickness } = last
  if (isStock(stock.value)) return { ...part, from: stock }
  if ('fault' in thickness) return void fail(thickness.fault)
  return withThickness(part, thickness)
}

function withThickness(part: UnnamedPart, thickness: WrittenLength): UnnamedPart {
  const { shape } = part
  if (shape.kind !== 'rectangle') return { ...part, thickness }
  const source = { ...shape.size.source, to: thickness.source.to }
  return { ...part, shape: { ...shape, size: { ...shape.size, source } }, thickness }
}
