import type { Bore, Depth, Placed, Shape } from '../../model/feature.ts'

/** A letter on the part, and all that it stands for: cuts that are made with one bit at one depth, or of one size. */
export type KeyEntry = { readonly letter: string; readonly members: readonly [Placed, ...Placed[]] }

/**
 * Letters for what is to be cut, in the order in which it stands in the plan, bores first since they are bored while
 * the piece is still whole. What wants the same bit to the same depth has the same letter.
 */
export function keyOf(features: readonly Placed[]): readonly KeyEntry[] {
  const groups = new Map<string, [Placed, ...Placed[]]>()
  for (const feature of features.toSorted((a, b) => order[a.shape.kind] - order[b.shape.kind])) {
    const key = cutKey(feature)
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [feature])
    else group.push(feature)
  }
  return [...groups.values()].map((members, i) => ({ letter: letterOf(i), members }))
}

/** Bores first, since they are bored while the piece is still whole; edges are eased, and the work engraved, at last. */
const order: Readonly<Record<Shape['kind'], number>> = {
  bore: 0,
  pocket: 1,
  groove: 2,
  rebate: 3,
  'cut-out': 4,
  'edge-cut': 5,
  bevel: 6,
  chamfer: 7,
  'round-over': 8,
  'engraved-lines': 9,
  'engraved-text': 10,
}

/** Equal for cuts that are made alike. Sizes are compared to a micrometre, far finer than any bit. */
function cutKey({ id, face, shape }: Placed): string {
  switch (shape.kind) {
    case 'bore':
      return ['bore', ...boreKey(shape), shape.mouth && face === 'back' ? 'behind' : ''].join(' ')
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
    case 'groove':
    case 'rebate':
    case 'chamfer':
      return [shape.kind, rounded(shape.width.mm), rounded(shape.depth.mm)].join(' ')
    case 'bevel':
      return ['bevel', face, shape.angle.toFixed(6)].join(' ')
    case 'round-over':
      return ['round-over', rounded(shape.radius.mm)].join(' ')
    case 'engraved-lines':
    case 'engraved-text':
      // what is engraved is drawn and says what it is, so each has its letter
      return ['engraving', id].join(' ')
  }
}

/** What a bore is made with, and how it stands; on all faces alike. */
function boreKey({ diameter, depth, lean, mouth, tip }: Bore): readonly string[] {
  const turned = (angle: number | undefined): string => angle?.toFixed(6) ?? ''
  return [
    rounded(diameter.mm),
    deep(depth),
    ...(lean ? lean.given.flatMap(({ toward, angle }) => [toward, turned(angle)]) : ['straight']),
    ...(mouth ? [mouth.kind, rounded(mouth.diameter.mm)] : ['plain']),
    ...(mouth?.kind === 'counterbore' ? [rounded(mouth.depth.mm)] : [turned(mouth?.angle)]),
    ...(tip ? [tip.point, turned(tip.angle)] : []),
  ]
}

function rounded(mm: number): string {
  return mm.toFixed(3)
}

function deep(depth: Depth): string {
  return depth === 'through' ? depth : rounded(depth.mm)
}

/** I and O are left out: on wood they are read as 1 and 0. */
const alphabet = 'ABCDEFGHJKLMNPQRSTUVWXYZ'

/** A to Z, then AA, AB and so on. */
export function letterOf(index: number): string {
  const last = alphabet[index % alphabet.length]!
  const before = Math.floor(index / alphabet.length)
  return before === 0 ? last : letterOf(before - 1) + last
}
