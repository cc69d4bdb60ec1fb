import type { Bore, Depth, Placed } from '../../model/feature.ts'

/** A letter on the part, and all that it stands for: cuts that are made with one bit at one depth, or of one size. */
export type KeyEntry = { readonly letter: string; readonly members: readonly [Placed, ...Placed[]] }

/**
 * Letters for what is to be cut, in the order in which it stands in the plan, bores first since they are bored while
 * the piece is still whole. What wants the same bit to the same depth has the same letter.
 */
export function keyOf(features: readonly Placed[]): readonly KeyEntry[] {
  const groups = new Map<string, [Placed, ...Placed[]]>()
  for (const kind of ['bore', 'pocket', 'cut-out', 'edge-cut'] as const) {
    for (const feature of features.filter(f => f.shape.kind === kind)) {
      const key = cutKey(feature)
      const group = groups.get(key)
      if (group === undefined) groups.set(key, [feature])
      else group.push(feature)
    }
  }
  return [...groups.values()].map((members, i) => ({ letter: letterOf(i), members }))
}

/** Equal for cuts that are made alike. Sizes are compared to a micrometre, far finer than any bit. */
function cutKey({ id, shape }: Placed): string {
  const rounded = (mm: number): string => mm.toFixed(3)
  const deep = (depth: Depth): string => (depth === 'through' ? depth : rounded(depth.mm))
  switch (shape.kind) {
    case 'bore':
      return [
        'bore',
        rounded(shape.diameter.mm),
        deep(shape.depth),
        ...mouthKey(shape),
        ...leanKey(shape),
      ].join(' ')
    case 'pocket':
      return [
        'pocket',
        rounded(shape.along.mm),
        rounded(shape.across.mm),
        shape.ends,
        deep(shape.depth),
      ].join(' ')
    case 'cut-out':
      // what is sawn out has a shape of its own, so each has its letter
      return ['cut-out', id].join(' ')
    case 'edge-cut':
      return ['edge-cut', rounded(shape.along.mm), rounded(shape.into.mm)].join(' ')
  }
}

function mouthKey({ mouth }: Bore): readonly string[] {
  if (mouth === undefined) return []
  const second = mouth.kind === 'counterbore' ? mouth.depth.mm : mouth.angle
  return [mouth.kind, mouth.diameter.mm.toFixed(3), second.toFixed(6)]
}

/** Which way it leans is seen at each hole; the table is tilted by the angle. */
function leanKey({ lean }: Bore): readonly string[] {
  return lean === undefined ? [] : [lean.angle.toFixed(6)]
}

/** I and O are left out: on wood they are read as 1 and 0. */
const alphabet = 'ABCDEFGHJKLMNPQRSTUVWXYZ'

/** A to Z, then AA, AB and so on. */
export function letterOf(index: number): string {
  const last = alphabet[index % alphabet.length]!
  const before = Math.floor(index / alphabet.length)
  return before === 0 ? last : letterOf(before - 1) + last
}
