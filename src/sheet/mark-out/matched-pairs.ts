import { isPlaced } from '../../model/feature.ts'
import type { Target } from '../../model/joint.ts'
import type { Model, Part } from '../../model/part.ts'
import { grouped } from '../grouped.ts'

/** Two holes of a part, by their ids, that have to stand as far apart as two of another piece do. */
export type MatchedPair = { readonly first: string; readonly second: string }

/**
 * Neighbours among the holes of a part that pins join to one and the same other piece: they are wanted at the same
 * distance from each other in both, whatever they are from the edges.
 */
export function matchedPairs(
  { id, drawn }: Pick<Part, 'id' | 'drawn'>,
  { joints }: Pick<Model, 'joints'>,
): readonly MatchedPair[] {
  const byMate = new Map<string, Set<string>>()
  for (const joint of joints) {
    if (joint.kind !== 'pin') continue
    joint.through.forEach((own, i) => {
      if (own.part !== id) return
      joint.through.forEach((mate, k) => {
        if (k === i) return
        const key = mateKey(own, mate)
        const holes = byMate.get(key) ?? new Set()
        for (const hole of own.features) holes.add(hole)
        byMate.set(key, holes)
      })
    })
  }
  const pairs = new Map<string, MatchedPair>()
  for (const holes of byMate.values()) {
    for (const [first, second] of neighbours(drawn, holes))
      pairs.set(`${first}\n${second}`, { first, second })
  }
  return [...pairs.values()]
}

/** The pieces that two targets are of. */
function mateKey(own: Target, mate: Target): string {
  return [own.piece ?? own.part, mate.piece ?? mate.part].join('\n')
}

/** Holes on one face, each with the next one along it, or up it where they stand one above the other. */
function neighbours(
  { features }: Part['drawn'],
  wanted: ReadonlySet<string>,
): readonly (readonly [string, string])[] {
  const holes = features
    .filter(isPlaced)
    .flatMap(({ id, face, shape }) =>
      shape.kind === 'bore' && wanted.has(id) ? [{ id, face, at: shape.centre }] : [],
    )
  return [...grouped(holes, ({ face }) => face).values()].flatMap(onFace => {
    const inOrder = onFace.toSorted((a, b) => a.at.x - b.at.x || a.at.y - b.at.y)
    return inOrder.slice(1).map((hole, i) => [inOrder[i]!.id, hole.id] as const)
  })
}
