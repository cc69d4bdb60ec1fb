import type { Bore } from '../../../src/model/feature.ts'
import type { Part } from '../../../src/model/part.ts'
import { modelOf, onlyPart } from '../model-of.ts'

/** A block of 60 x 40 x 30 mm, or of another size, with one cut. */
export function blockWith(cut: string, { size = '60 x 40 x 30', units = 'mm', more = '' } = {}): Part {
  const head = `paperjig: 1\ntitle: Pier\nunits: ${units}\nparts:\n  block:\n    size: ${size}\n${more}`
  return onlyPart(modelOf(`${head}    cuts:\n      - { ${cut} }\n`))
}

export function boreOf(part: Part, index = 0, solid = part.drawn): Bore {
  const shape = solid.features[index]?.shape
  if (shape?.kind !== 'bore') throw new Error(`${shape?.kind} is no bore`)
  return shape
}

/** The bore of a hole in a block; `keys` is what the hole says besides its place. */
export function boreWith(keys: string, where = 'at: center', units = 'mm'): Bore {
  return boreOf(blockWith(`hole: peg, ${where}, ${keys}`, { units }))
}
